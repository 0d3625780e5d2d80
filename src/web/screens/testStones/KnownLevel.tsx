import { levelsOf } from '../../managers/testStones/trialForm.ts';
import { Choice } from '../../parts/Choice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** Puts one that is known here to what is tried, by the name that it has on every other screen. */
export function KnownLevel({
  known,
  tried,
  onAdd,
}: {
  /** Names that are known here of what is compared. */
  known: readonly string[];
  /** What is tried so far. */
  tried: readonly string[];
  onAdd: (level: string) => void;
}) {
  const taken = new Set(levelsOf({ levels: tried }));
  const free = known.filter((level) => !taken.has(level) && !level.includes(','));
  if (free.length === 0) return null;
  return (
    <Choice
      label={say('Add one that is known here')}
      value=""
      options={[['', say('choose …')], ...free.map((level) => [level, told(level)] as const)]}
      onChoose={(level) => level !== '' && onAdd(level)}
    />
  );
}
