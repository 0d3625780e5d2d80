import type { LevelFinding } from '../../../records/testPlanEntry.ts';
import { Button } from '../../parts/Button.tsx';

/** Levels that nobody here knows, with the nearest that is known; each may be said to be a new one. */
export function LevelNotes({
  levels,
  onNew,
}: {
  levels: readonly LevelFinding[];
  onNew: (treatment: string, level: string) => void;
}) {
  const told = levels.filter(({ message }) => message !== null);
  if (told.length === 0) return null;
  return (
    <section className="test-stone-form" aria-label="Levels to look at">
      <ul className="plan-levels">
        {told.map(({ treatment, level, state, message }) => (
          <li key={`${treatment} ${level}`}>
            <p>{message}</p>
            {state === 'unknown' && (
              <Button kind="quiet" onClick={() => onNew(treatment, level)}>
                “{level}” is a new one
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
