import { type PointerEvent, useRef, useState } from 'react';
import type { StonePatch } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { type LinkedView, toScreenPx } from '../../managers/linkedView.ts';
import { laidLarger, outlineBox } from '../../managers/testStones/patchDrawing.ts';

/** How far round the corner a finger catches it, px: a circle of 48 px. */
const reachPx = 24;

/**
 * The corner of the patch in hand by which it is made larger or smaller: drawn as two crayon strokes, caught by finger or mouse.
 * What it would become is shown until it is let go; then it is one step that can be taken back.
 */
export function SizeCorner({
  view,
  patch,
  stoneMm,
  onLay,
}: {
  view: LinkedView;
  patch: StonePatch;
  stoneMm: Point;
  onLay: (polygonMm: readonly Point[]) => void;
}) {
  const from = useRef<Point | null>(null);
  const [byMm, setByMm] = useState<Point | null>(null);
  const next = byMm ? laidLarger(patch.polygonMm, byMm, stoneMm) : null;
  const shown = outlineBox(next ?? patch.polygonMm);
  const [x, y] = toScreenPx(view, [shown.fromMm[0] + shown.sizeMm[0], shown.fromMm[1] + shown.sizeMm[1]]);
  const moved = (event: PointerEvent): Point => [
    (event.clientX - from.current![0]) / view.pxPerMm,
    (event.clientY - from.current![1]) / view.pxPerMm,
  ];
  const end = (event: PointerEvent, kept: boolean) => {
    event.stopPropagation();
    // Where it is let go counts: the last move may not have been drawn yet.
    const [right, down]: Point = kept && from.current ? moved(event) : [0, 0];
    if (right !== 0 || down !== 0) onLay(laidLarger(patch.polygonMm, [right, down], stoneMm));
    from.current = null;
    setByMm(null);
  };
  return (
    <g className="size-corner">
      {next && <polygon points={next.map((place) => toScreenPx(view, place).join(' ')).join(' ')} />}
      <path d={`M${x + 12} ${y - 14}V${y + 12}H${x - 14}M${x + 20} ${y - 6}V${y + 20}H${x - 6}`} />
      <circle
        cx={x + 8}
        cy={y + 8}
        r={reachPx}
        onPointerDown={(event) => {
          event.stopPropagation();
          event.preventDefault();
          event.currentTarget.setPointerCapture(event.pointerId);
          from.current = [event.clientX, event.clientY];
        }}
        onPointerMove={(event) => {
          if (!from.current) return;
          event.stopPropagation();
          setByMm(moved(event));
        }}
        onPointerUp={(event) => end(event, true)}
        onPointerCancel={(event) => end(event, false)}
      />
    </g>
  );
}
