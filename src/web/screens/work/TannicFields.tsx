import { useQuery } from '@tanstack/react-query';
import type { BatchEntry } from '../../../records/batch.ts';
import type { PlanChoices } from '../../../records/keptPlan.ts';
import { batchesKey, listBatches } from '../../client/batches.ts';
import { withTannic } from '../../managers/planChoices.ts';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';

/** The tannic solution: by its batch, or by what is known of it. What is not known becomes a caution of the plan. */
export function TannicFields({
  choices,
  onChoices,
}: {
  choices: PlanChoices;
  onChoices: (choices: PlanChoices) => void;
}) {
  const { tannic, tannicBatchId } = choices;
  const batches = useQuery({
    queryKey: [...batchesKey, 'tannic in use'],
    queryFn: ({ signal }) => listBatches({ search: '', putBy: 'no', kind: 'tannic' }, null, signal),
  });
  const gum = tannic?.gum ?? null;
  return (
    <fieldset className="tannic-fields">
      <legend>{say('Tannic solution')}</legend>
      {(batches.data?.batches ?? []).length > 0 && (
        <Choice
          label={say('Batch')}
          value={tannicBatchId ?? ''}
          options={[
            ['', say('as written below')] as const,
            ...batches.data!.batches.map((batch) => [batch.id, batchWords(batch)] as const),
          ]}
          onChoose={(id) => onChoices({ ...choices, tannic: null, tannicBatchId: id || null })}
        />
      )}
      {tannicBatchId === null && (
        <>
          <div className="plan-choices-pair">
            <NumberField
              label={say('Tannic acid')}
              unit="g/l"
              value={tannic?.gramsPerLitre ?? null}
              least={0.1}
              most={1000}
              needed={false}
              placeholder={say('not known')}
              onValue={(gramsPerLitre) => onChoices(withTannic(choices, { gramsPerLitre }))}
            />
            <NumberField
              label={say('Measured pH')}
              value={tannic?.pH ?? null}
              least={0}
              most={14}
              needed={false}
              placeholder={say('not known')}
              onValue={(pH) => onChoices(withTannic(choices, { pH }))}
            />
          </div>
          <Picks
            label={say('Does it hold gum?')}
            value={gum === null ? 'unknown' : gum ? 'yes' : 'no'}
            options={[
              ['yes', say('Yes')],
              ['no', say('No')],
              ['unknown', say('Not known')],
            ]}
            onPick={(said) =>
              onChoices(withTannic(choices, { gum: said === 'unknown' ? null : said === 'yes' }))
            }
          />
        </>
      )}
    </fieldset>
  );
}

function batchWords(batch: BatchEntry): string {
  if (batch.kind !== 'tannic') return batch.name;
  const known = [
    batch.gramsPerLitre === null ? null : say('{gramsPerLitre} g/l', { gramsPerLitre: batch.gramsPerLitre }),
    batch.pH === null ? null : say('pH {pH}', { pH: batch.pH }),
    batch.gum === null ? null : batch.gum ? say('with gum') : say('without gum'),
  ].filter(Boolean);
  return [batch.name, ...known].join(', ');
}
