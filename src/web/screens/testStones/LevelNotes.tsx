import type { OwnEtch } from '../../../records/testPlan.ts';
import type { LevelFinding } from '../../../records/testPlanEntry.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { toldOr } from '../../words/told.ts';
import { OwnEtchFields } from './OwnEtchFields.tsx';

/** What is tried that nobody here knows, with the nearest that is known; each may be said to be new, and a new etch what it is made of. */
export function LevelNotes({
  levels,
  onNew,
  onOwnEtch,
}: {
  levels: readonly LevelFinding[];
  onNew: (treatment: string, level: string) => void;
  onOwnEtch: (etch: OwnEtch) => void;
}) {
  const noted = levels.filter(({ message }) => message !== null);
  if (noted.length === 0) return null;
  return (
    <section className="test-stone-form" aria-label={say('Words to look at')}>
      <ul className="plan-levels">
        {noted.map(({ treatment, level, state, message }) => (
          <li key={`${treatment} ${level}`}>
            <p>{toldOr(message)}</p>
            {state === 'unknown' && (
              <Button kind="quiet" onClick={() => onNew(treatment, level)}>
                {say('“{level}” is a new one', { level })}
              </Button>
            )}
            {state === 'new' && <OwnEtchFields level={level} onSaid={onOwnEtch} />}
          </li>
        ))}
      </ul>
    </section>
  );
}
