import './BenchTargets.css';
import type { BenchTap } from '../../managers/bench/benchTaps.ts';
import { sayRich } from '../../words/sayRich.ts';
import { HoldButton } from './HoldButton.tsx';

/** What hands in gum touch: what is lit first and largest, then what else can be logged, trouble and undo. */
export function BenchTargets({
  first,
  lit = true,
  others,
  trouble,
  undo,
  onTap,
  onUndo,
}: {
  /** What one touch of the large target logs, in order; it says what the first of them does. */
  first: readonly BenchTap[];
  /** False where it is too soon for it: it is then a plain target. */
  lit?: boolean;
  others: readonly BenchTap[];
  trouble: BenchTap | null;
  /** What would be taken back; null where there is nothing. */
  undo: string | null;
  onTap: (...taps: readonly BenchTap[]) => void;
  onUndo: () => void;
}) {
  const target = (tap: BenchTap, kind: string, also: readonly BenchTap[] = []) => (
    <button
      key={`${kind} ${tap.kind} ${tap.place}`}
      type="button"
      className={`bench-target ${kind}`}
      // the space bar stays with what is lit, not with what was touched last
      onMouseDown={(event) => event.preventDefault()}
      onClick={() => onTap(tap, ...also)}
    >
      {tap.words}
    </button>
  );
  return (
    <div className="bench-targets">
      {first[0] && target(first[0], lit ? 'first' : 'first early', first.slice(1))}
      {others.map((tap) => target(tap, 'other'))}
      {trouble && target(trouble, 'other')}
      {undo !== null && (
        <HoldButton onHeld={onUndo}>
          {sayRich('Hold: take back <small>{undo}</small>', {
            small: (words) => <small>{words}</small>,
            undo,
          })}
        </HoldButton>
      )}
    </div>
  );
}
