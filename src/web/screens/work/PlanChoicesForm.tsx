import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { KeptPlan, PlanChoices } from '../../../records/keptPlan.ts';
import { lengthFigure, lengthWords } from '../../../words/lengths.ts';
import { listTables, openTable, tableKey, tablesKey } from '../../client/etchTables.ts';
import { choicesOf, startingChoices, usesTannic } from '../../managers/planChoices.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { bestPhotograph } from './PhotographUnder.tsx';
import { TannicFields } from './TannicFields.tsx';
import { usePlanMaking } from './usePlanMaking.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** What a plan is made with, and making it; begins where the last plan left off. */
export function PlanChoicesForm({
  desk,
  last,
  onMade,
}: {
  desk: WorkDesk;
  last: KeptPlan | null;
  onMade: (id: string) => void;
}) {
  const { work } = desk;
  const [choices, setChoices] = useState<PlanChoices>(last ? choicesOf(last) : startingChoices);
  const { make, busy, trouble } = usePlanMaking(work.id, desk, onMade);
  const set = (changes: Partial<PlanChoices>) => setChoices((now) => ({ ...now, ...changes }));
  const tables = useQuery({ queryKey: tablesKey, queryFn: listTables });
  const table = useQuery({
    queryKey: tableKey(choices.tableId),
    queryFn: () => openTable(choices.tableId),
  });
  const photograph = bestPhotograph(work);
  const shownTrouble = trouble ?? (desk.unsaved ? desk.trouble : null);
  const form = (
    <form
      className="plan-choices"
      onSubmit={(event) => {
        event.preventDefault();
        void make(choices);
      }}
    >
      <Choice
        label={say('Etch table')}
        value={choices.tableId}
        options={(tables.data ?? []).map(
          ({ id, name, version }) =>
            [id, say('{name}, issue {issue}', { name: told(name), issue: version })] as const,
        )}
        onChoose={(tableId) => set({ tableId, tableVersion: null })}
      />
      <Picks
        label={say('At the stone')}
        value={String(choices.people) as '1' | '2'}
        options={[
          ['1', say('One person')],
          ['2', say('Two people')],
        ]}
        onPick={(people) => set({ people: people === '1' ? 1 : 2 })}
      />
      <Picks
        label={say('The strongest etch')}
        value={String(choices.stages ?? 1) as '1' | '2'}
        options={[
          ['1', say('laid with the rest')],
          ['2', say('once the rest is lifted')],
        ]}
        onPick={(stages) => set({ stages: stages === '2' ? 2 : 1 })}
      />
      {table.data && usesTannic(table.data.table) && (
        <TannicFields choices={choices} onChoices={setChoices} />
      )}
      <div className="plan-choices-pair">
        <NumberField
          label={say('Film of liquid')}
          unit="mm"
          value={choices.filmMm}
          least={0.1}
          most={3}
          onValue={(filmMm) => filmMm !== null && set({ filmMm })}
        />
        <NumberField
          label={say('Guard between strong and light')}
          unit="mm"
          value={choices.guardMm}
          least={0}
          most={200}
          onValue={(guardMm) => guardMm !== null && set({ guardMm })}
        />
        <NumberField
          label={say('A brush lays')}
          unit={say('mm² a second')}
          value={choices.layMm2PerSecond}
          least={50}
          most={20_000}
          onValue={(layMm2PerSecond) => layMm2PerSecond !== null && set({ layMm2PerSecond })}
        />
      </div>
      {photograph && (
        <Picks
          label={say('A wash that spans light and dark')}
          value={choices.splitFrom === null ? 'whole' : 'split'}
          options={[
            ['whole', say('laid whole, by its light part')],
            ['split', say('split by its tone on the photograph')],
          ]}
          onPick={(how) => set({ splitFrom: how === 'split' ? photograph.photograph : null })}
        />
      )}
      <p className="soft">
        {say(
          'Films of {thin} to {thick} are common practice; the speed of a brush is from memory. Log what this room does.',
          { thin: lengthFigure(0.5, 1), thick: lengthWords(0.8, 1) },
        )}
      </p>
      {shownTrouble && <FailureNotice failure={shownTrouble} />}
      <Button kind={last ? 'plain' : 'act'} type="submit" disabled={busy}>
        {busy
          ? say('Planning …')
          : desk.unsaved
            ? say('Save the drawing and plan')
            : last
              ? say('Plan anew')
              : say('Make the plan')}
      </Button>
      {work.zones.length === 0 && !desk.unsaved && (
        <p className="soft">{say('No zone is drawn yet: the plan will be for the ground alone.')}</p>
      )}
    </form>
  );
  if (last) return <Fold title={say('Plan anew, with other choices')}>{form}</Fold>;
  return (
    <section aria-labelledby="choices-head">
      <h2 id="choices-head" className="big">
        {say('Plan it with')}
      </h2>
      {form}
    </section>
  );
}
