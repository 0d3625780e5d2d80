import './CornerBoard.css';
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { previewAddress } from '../client/photographs.ts';
import {
  type CornerIndex,
  moveCorner,
  nearestCorner,
  pushCorner,
  stepOfKey,
} from '../managers/cornerMarks.ts';

/**
 * A photograph with numbered marks on it, four corners or two lines of a ruler, joined in order. Marks are dragged, pushed by
 * arrow keys, or called by a press beside them. `names` say what each mark stands for; no two are alike.
 */
export function CornerBoard<Marks extends readonly Point[] = Corners>({
  photograph,
  corners,
  names,
  active,
  onActive,
  onCorners,
  onMagnify,
}: {
  photograph: PhotographEntry;
  corners: Marks;
  names: readonly string[];
  active: CornerIndex;
  onActive: (index: CornerIndex) => void;
  onCorners: (corners: Marks) => void;
  onMagnify: (closer: boolean) => void;
}) {
  const board = useRef<HTMLDivElement>(null);
  const marks = useRef<(HTMLButtonElement | null)[]>([]);
  const held = useRef<{ index: CornerIndex; off: Point } | null>(null);
  const { widthPx, heightPx } = photograph;
  const size: Point = [widthPx, heightPx];

  const at = (event: PointerEvent): Point => {
    const box = board.current!.getBoundingClientRect();
    return [
      ((event.clientX - box.left) / box.width) * widthPx,
      ((event.clientY - box.top) / box.height) * heightPx,
    ];
  };
  const take = (event: PointerEvent) => {
    event.preventDefault();
    const pressed = at(event);
    const box = board.current!.getBoundingClientRect();
    const { index, distancePx } = nearestCorner(corners, pressed);
    const near = (distancePx / widthPx) * box.width < 32;
    held.current = {
      index,
      off: near ? [corners[index]![0] - pressed[0], corners[index]![1] - pressed[1]] : [0, 0],
    };
    board.current!.setPointerCapture(event.pointerId);
    marks.current[index]?.focus({ preventScroll: true });
    if (!near) onCorners(moveCorner(corners, index, pressed, size));
  };
  const drag = (event: PointerEvent) => {
    if (!held.current) return;
    const { index, off } = held.current;
    const now = at(event);
    onCorners(moveCorner(corners, index, [now[0] + off[0], now[1] + off[1]], size));
  };
  const key = (event: KeyboardEvent, index: CornerIndex) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = stepOfKey(event.key, event.shiftKey);
    if (step) onCorners(pushCorner(corners, index, step, size));
    else if (event.key === '+' || event.key === '-') onMagnify(event.key === '+');
    else return;
    event.preventDefault();
  };

  return (
    <div className="corner-frame" style={{ '--aspect': widthPx / heightPx } as React.CSSProperties}>
      <div
        ref={board}
        className="corner-board"
        onPointerDown={take}
        onPointerMove={drag}
        onPointerUp={() => {
          held.current = null;
        }}
        onPointerCancel={() => {
          held.current = null;
        }}
      >
        <img
          src={previewAddress(photograph.id, 1600)}
          alt={`Photograph ${photograph.fileName}`}
          draggable={false}
        />
        <svg viewBox={`0 0 ${widthPx} ${heightPx}`} preserveAspectRatio="none" aria-hidden="true">
          <polygon className="corner-rim" points={corners.map((corner) => corner.join(',')).join(' ')} />
          <polygon className="corner-line" points={corners.map((corner) => corner.join(',')).join(' ')} />
        </svg>
        {corners.map(([x, y], at) => {
          const index = at as CornerIndex;
          return (
            <button
              key={names[index]}
              ref={(element) => {
                marks.current[index] = element;
              }}
              type="button"
              className={index === active ? 'corner-mark active' : 'corner-mark'}
              aria-label={`Mark ${index + 1}: ${names[index]}. At ${Math.round(x)}, ${Math.round(y)} px. Arrow keys move it by 1, with Shift by 10.`}
              style={{
                left: `${(x / widthPx) * 100}%`,
                top: `${(y / heightPx) * 100}%`,
              }}
              onFocus={() => onActive(index)}
              onKeyDown={(event) => key(event, index)}
            >
              <span aria-hidden="true">{index + 1}</span>
            </button>
          );
        })}
      </div>
    </div>
  );
}
