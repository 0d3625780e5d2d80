import type { LevelFinding } from '../../../records/testPlanEntry.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { toldOr } from '../../words/told.ts';

/** Levels that nobody here knows, with the nearest that is known; each may be said to be a new one. */
export function LevelNotes({
  levels,
  onNew,
}: {
  levels: readonly LevelFinding[];
  onNew: (treatment: string, level: string) => void;
}) {
  const noted = levels.filter(({ message }) => message !== null);
  if (noted.length === 0) return null;
  return (
    <section className="test-stone-form" aria-label={say('Levels to look at')}>
      <ul className="plan-levels">
        {noted.map(({ treatment, level, state, message }) => (
          <li key={`${treatment} ${level}`}>
            <p>{toldOr(message)}</p>
            {state === 'unknown' && (
              <Button kind="quiet" onClick={() => onNew(treatment, level)}>
                {say('“{level}” is a new one', { level })}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
