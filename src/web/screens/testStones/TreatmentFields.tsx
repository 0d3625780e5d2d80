import { levelLines, type Reach, type TypedTreatment } from '../../managers/testStones/trialForm.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { keptName, shownName } from '../../words/ownNames.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { LevelFields } from './LevelFields.tsx';

const reaches = [
  ['patch', say('each patch')],
  ['strip', say('a whole strip')],
  ['stone', say('a whole stone')],
] as const;

const examples = [
  // As the catalogue and the tables name them.
  'crayon #2',
  'gum alone',
  say('yes'),
] as const;

/** Things that are often compared, as they are kept. */
const compared = ['medium', 'deposit', 'etch', 'contact', 'powder', 'rest', 'washout'] as const;

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
          aria-label={told(name.trim()) || say('Comparison {index}', { index: index + 1 })}
        >
          <Field
            label={index === 0 ? say('What is compared') : say('And, with it, what else')}
            value={shownName(name, compared)}
            onChange={(event) => change(id, { name: keptName(event.target.value, compared) })}
          />
          <LevelFields
            name={name.trim()}
            levels={levels}
            example={examples[index] ?? examples[0]}
            onLevels={(next) => change(id, { levels: next })}
          />
          <Picks<Reach>
            label={
              name.trim()
                ? say('Each kind of “{name}” is given to', { name: told(name.trim()) })
                : say('Each kind of it is given to')
            }
            value={reach}
            options={reaches}
            onPick={(next) => change(id, { reach: next })}
          />
          {treatments.length > 1 && (
            <Button kind="quiet" onClick={() => onTreatments(treatments.filter((each) => each.id !== id))}>
              {name.trim() ? say('Leave out {name}', { name: told(name.trim()) }) : say('Leave it out')}
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
                levels: levelLines([]),
                reach: free ?? 'stone',
              },
            ])
          }
        >
          {say('Compare something else too')}
        </Button>
      )}
    </>
  );
}
