import { useId } from 'react';
import { Field } from '../../parts/Field.tsx';
import { keptName, shownName } from '../../words/ownNames.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { useKnownNames } from './useKnownNames.ts';

/** What picked patches got of one thing that was varied; what other patches got can be chosen. */
export function PatchLevelField({
  name,
  shared,
  given,
  onLevel,
}: {
  /** What was varied. */
  name: string;
  /** What all picked patches got; null: they differ. */
  shared: string | null;
  /** What any patch of the stone got. */
  given: readonly string[];
  onLevel: (level: string) => void;
}) {
  const list = useId();
  const known = useKnownNames(name);
  return (
    <>
      <Field
        label={told(name)}
        list={list}
        value={shownName(shared ?? '', known)}
        placeholder={shared === null ? say('they differ') : say('not known')}
        autoComplete="off"
        onChange={(event) => onLevel(keptName(event.target.value, known))}
      />
      <datalist id={list}>
        {given.map((level) => (
          <option key={level} value={shownName(level, known)} />
        ))}
      </datalist>
    </>
  );
}
