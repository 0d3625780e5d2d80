import type { Reach, TypedTreatment } from '../../managers/testStones/trialForm.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';

const reaches = [
  ['patch', 'each patch'],
  ['strip', 'a whole strip'],
  ['stone', 'a whole stone'],
] as const;

const examples = ['crayon-2, crayon-5, tusche-water', 'gum alone, gum and tannic 1:1', 'yes, no'];

/** What a test varies: each treatment, its levels, and to what it is given at once. */
export function TreatmentFields({
  treatments,
  onTreatments,
}: {
  treatments: readonly TypedTreatment[];
  onTreatments: (treatments: readonly TypedTreatment[]) => void;
}) {
  const change = (id: number, changes: Partial<TypedTreatment>) =>
    onTreatments(treatments.map((each) => (each.id === id ? { ...each, ...changes } : each)));
  const free = (['patch', 'strip', 'stone'] as const).find(
    (reach) => !treatments.some((each) => each.reach === reach),
  );
  return (
    <>
      {treatments.map(({ id, name, levels, reach }, index) => (
        <section
          key={id}
          className="test-stone-picked plan-treatment"
          aria-label={name.trim() || `Treatment ${index + 1}`}
        >
          <Field
            label={index === 0 ? 'Compare' : 'And, with it'}
            value={name}
            onChange={(event) => change(id, { name: event.target.value })}
          />
          <Field
            label={`Levels of ${name.trim() || 'it'}`}
            hint={`Parted by commas, such as ${examples[index] ?? examples[0]}.`}
            value={levels}
            onChange={(event) => change(id, { levels: event.target.value })}
          />
          <Picks<Reach>
            label={`${name.trim() || 'It'} is given at once to`}
            value={reach}
            options={reaches}
            onPick={(next) => change(id, { reach: next })}
          />
          {treatments.length > 1 && (
            <Button kind="quiet" onClick={() => onTreatments(treatments.filter((each) => each.id !== id))}>
              Leave out {name.trim() || 'it'}
            </Button>
          )}
        </section>
      ))}
      {treatments.length < 3 && (
        <Button
          onClick={() =>
            onTreatments([
              ...treatments,
              {
                id: Math.max(0, ...treatments.map(({ id }) => id)) + 1,
                name: '',
                levels: '',
                reach: free ?? 'stone',
              },
            ])
          }
        >
          Vary something else too
        </Button>
      )}
    </>
  );
}
