import './BenchTargets.css';
import type { BenchTap, BenchTaps } from '../../managers/bench/benchTaps.ts';
import { HoldButton } from './HoldButton.tsx';

/** What hands in gum touch: what is lit first and largest, then what else can be logged, trouble and undo. */
export function BenchTargets({
  taps,
  trouble,
  undo,
  onTap,
  onUndo,
}: {
  taps: BenchTaps;
  trouble: BenchTap | null;
  /** What would be taken back; null where there is nothing. */
  undo: string | null;
  onTap: (tap: BenchTap) => void;
  onUndo: () => void;
}) {
  const target = (tap: BenchTap, kind: string) => (
    <button
      key={`${kind} ${tap.kind}`}
      type="button"
      className={`bench-target ${kind}`}
      // the space bar stays with what is lit, not with what was touched last
      onMouseDown={(event) => event.preventDefault()}
      onClick={() => onTap(tap)}
    >
      {tap.words}
    </button>
  );
  return (
    <div className="bench-targets">
      {taps.first && target(taps.first, 'first')}
      {taps.others.map((tap) => target(tap, 'other'))}
      {trouble && target(trouble, 'other')}
      {undo !== null && (
        <HoldButton onHeld={onUndo}>
          Hold: undo <small>{undo}</small>
        </HoldButton>
      )}
    </div>
  );
}
