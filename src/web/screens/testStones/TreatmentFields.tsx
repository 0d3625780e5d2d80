import { type Reach, type TypedTreatment, withLevelTyped } from '../../managers/testStones/trialForm.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { KnownLevel } from './KnownLevel.tsx';

const reaches = [
  ['patch', say('each patch')],
  ['strip', say('a whole strip')],
  ['stone', say('a whole stone')],
] as const;

const examples = [
  // As the catalogue and the tables name them.
  say('crayon #2, crayon #5, tusche in water'),
  say('gum alone, gum and tannic 1:1'),
  say('yes, no'),
];

/** What a test compares: each thing, what is tried of it, and to what it is given at once. */
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
          aria-label={name.trim() || say('Comparison {index}', { index: index + 1 })}
        >
          <Field
            label={index === 0 ? say('Compare') : say('And, with it')}
            value={name}
            onChange={(event) => change(id, { name: event.target.value })}
          />
          <Field
            label={name.trim() ? say('{name}: what you try', { name: name.trim() }) : say('What you try')}
            hint={say('Parted by commas, such as {examples}.', { examples: examples[index] ?? examples[0] })}
            value={levels}
            onChange={(event) => change(id, { levels: event.target.value })}
          />
          <KnownLevel
            name={name.trim()}
            typed={levels}
            onAdd={(level) => change(id, { levels: withLevelTyped(levels, level) })}
          />
          <Picks<Reach>
            label={
              name.trim()
                ? say('{name} is given at once to', { name: name.trim() })
                : say('It is given at once to')
            }
            value={reach}
            options={reaches}
            onPick={(next) => change(id, { reach: next })}
          />
          {treatments.length > 1 && (
            <Button kind="quiet" onClick={() => onTreatments(treatments.filter((each) => each.id !== id))}>
              {name.trim() ? say('Leave out {name}', { name: name.trim() }) : say('Leave out it')}
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
          {say('Vary something else too')}
        </Button>
      )}
    </>
  );
}
