import './CornerBoard.css';
import { type KeyboardEvent, useRef } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import {
  type CornerIndex,
  moveCorner,
  nearestCorner,
  pushCorner,
  stepOfKey,
} from '../managers/cornerMarks.ts';
import { keyStride, strideKey } from '../managers/keyStride.ts';
import { say } from '../words/say.ts';
import { MarkedPhotograph, type PhotographPress, placeOn } from './MarkedPhotograph.tsx';

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
  const marks = useRef<(HTMLButtonElement | null)[]>([]);
  const held = useRef<{ index: CornerIndex; off: Point } | null>(null);
  const size: Point = [photograph.widthPx, photograph.heightPx];
  const take = ({ at, perScreenPx }: PhotographPress) => {
    const { index, distancePx } = nearestCorner(corners, at);
    const near = distancePx / perScreenPx < 32;
    held.current = { index, off: near ? [corners[index]![0] - at[0], corners[index]![1] - at[1]] : [0, 0] };
    marks.current[index]?.focus({ preventScroll: true });
    if (!near) onCorners(moveCorner(corners, index, at, size));
  };
  const drag = (now: Point) => {
    if (!held.current) return;
    const { index, off } = held.current;
    onCorners(moveCorner(corners, index, [now[0] + off[0], now[1] + off[1]], size));
  };
  const key = (event: KeyboardEvent, index: CornerIndex) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = stepOfKey(event.key, keyStride.current());
    if (step) onCorners(pushCorner(corners, index, step, size));
    else if (event.key === '+' || event.key === '-') onMagnify(event.key === '+');
    else if (event.key === strideKey) keyStride.change();
    else return;
    event.preventDefault();
  };

  return (
    <MarkedPhotograph
      photograph={photograph}
      outlinesPx={[corners]}
      onPress={take}
      onMove={drag}
      onDrop={() => {
        held.current = null;
      }}
    >
      {corners.map((corner, at) => {
        const index = at as CornerIndex;
        return (
          <button
            key={names[index]}
            ref={(element) => {
              marks.current[index] = element;
            }}
            type="button"
            className={index === active ? 'corner-mark active' : 'corner-mark'}
            aria-label={say(
              'Mark {index}: {names}. At {corner}, {corner2} px. Arrow keys push it; 0 changes how far.',
              {
                index: index + 1,
                names: names[index],
                corner: Math.round(corner[0]),
                corner2: Math.round(corner[1]),
              },
            )}
            style={placeOn(photograph, corner)}
            onFocus={() => onActive(index)}
            onKeyDown={(event) => key(event, index)}
          >
            <span aria-hidden="true">{index + 1}</span>
          </button>
        );
      })}
    </MarkedPhotograph>
  );
}
