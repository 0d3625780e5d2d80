import './ChipBoard.css';
import { type KeyboardEvent, useRef, useState } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Point } from '../../science/geometry/point.ts';
import {
  boxOf,
  chipAt,
  drawnBox,
  movedChip,
  pressedBox,
  resizedChip,
  type TypedChip,
} from '../managers/chipBoxes.ts';
import { stepOfKey } from '../managers/cornerMarks.ts';
import { keyStride, strideKey } from '../managers/keyStride.ts';
import { say } from '../words/say.ts';
import { MarkedPhotograph, type PhotographPress, placeOn } from './MarkedPhotograph.tsx';

/** Where the corner mark lies past a box's far corner, and how near a press must be to it, screen px. */
const cornerPx = { away: 7, fine: 9, coarse: 16 } as const;

type Held =
  | { readonly doing: 'moving' | 'resizing'; readonly index: number; readonly last: Point }
  | { readonly doing: 'drawing'; readonly from: Point; readonly to: Point };

/**
 * A photograph with numbered boxes on its grey chips. A press on a bare place puts a box there, dragging draws one; a box
 * is moved by dragging it, made larger by its far corner; arrow keys move the one in hand, or after Enter make it larger.
 */
export function ChipBoard({
  photograph,
  chips,
  active,
  onActive,
  onChange,
  onDrawn,
  onRemove,
}: {
  photograph: PhotographEntry;
  chips: readonly TypedChip[];
  active: number | null;
  onActive: (index: number) => void;
  onChange: (index: number, polygonPx: readonly Point[]) => void;
  onDrawn: (polygonPx: readonly Point[]) => void;
  onRemove: (index: number) => void;
}) {
  const held = useRef<Held | null>(null);
  const [drawn, setDrawn] = useState<readonly Point[] | null>(null);
  // What arrow keys do with the box in hand.
  const [sizing, setSizing] = useState(false);
  const { widthPx, heightPx } = photograph;
  const size: Point = [widthPx, heightPx];
  const take = ({ at: pressed, perScreenPx, finger }: PhotographPress) => {
    const reachPx = perScreenPx * (finger ? cornerPx.coarse : cornerPx.fine);
    const corner = active === null ? null : { index: active, awayPx: perScreenPx * cornerPx.away, reachPx };
    const found = chipAt(chips, pressed, corner);
    if (found) {
      onActive(found.index);
      const doing = found.part === 'corner' ? 'resizing' : 'moving';
      held.current = { doing, index: found.index, last: pressed };
    } else held.current = { doing: 'drawing', from: pressed, to: pressed };
  };
  const drag = (now: Point) => {
    const hand = held.current;
    if (!hand) return;
    if (hand.doing === 'drawing') {
      held.current = { ...hand, to: now };
      setDrawn(drawnBox(hand.from, now, size));
      return;
    }
    const by: Point = [now[0] - hand.last[0], now[1] - hand.last[1]];
    const change = hand.doing === 'moving' ? movedChip : resizedChip;
    onChange(hand.index, change(chips[hand.index]!.polygonPx, by, size));
    held.current = { ...hand, last: now };
  };
  const drop = (kept: boolean) => {
    const hand = held.current;
    held.current = null;
    setDrawn(null);
    if (kept && hand?.doing === 'drawing')
      onDrawn(drawnBox(hand.from, hand.to, size) ?? pressedBox(hand.from, chips, size));
  };
  const key = (event: KeyboardEvent, index: number) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = stepOfKey(event.key, keyStride.current());
    const change = sizing ? resizedChip : movedChip;
    if (step) onChange(index, change(chips[index]!.polygonPx, step, size));
    else if (event.key === 'Delete' || event.key === 'Backspace') onRemove(index);
    else if (event.key === 'Enter') setSizing(!sizing);
    else if (event.key === strideKey) keyStride.change();
    else return;
    event.preventDefault();
  };
  return (
    <MarkedPhotograph
      photograph={photograph}
      outlinesPx={[...chips.map(({ polygonPx }) => polygonPx), ...(drawn ? [drawn] : [])]}
      onPress={take}
      onMove={drag}
      onDrop={drop}
    >
      {chips.map(({ polygonPx }, index) => {
        const { from, to } = boxOf(polygonPx);
        return (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: boxes have no other name
            key={index}
            type="button"
            className={index === active ? 'chip-box active' : 'chip-box'}
            aria-label={
              sizing
                ? say(
                    'Chip {index}, at {from}, {from2} px. Arrow keys make it larger or smaller; Enter: they move it. 0 changes how far; Delete takes it away.',
                    { index: index + 1, from: Math.round(from[0]), from2: Math.round(from[1]) },
                  )
                : say(
                    'Chip {index}, at {from}, {from2} px. Arrow keys move it; Enter: they make it larger or smaller. 0 changes how far; Delete takes it away.',
                    { index: index + 1, from: Math.round(from[0]), from2: Math.round(from[1]) },
                  )
            }
            style={{
              ...placeOn(photograph, from),
              width: `${((to[0] - from[0]) / widthPx) * 100}%`,
              height: `${((to[1] - from[1]) / heightPx) * 100}%`,
            }}
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
