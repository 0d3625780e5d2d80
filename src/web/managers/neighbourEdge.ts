import type { Point } from '../../science/geometry/point.ts';
import { apartMm, footOn } from './laidAgainst.ts';
import type { Drawing } from './zoneDrawing.ts';

interface InHand {
  readonly drawing: Drawing;
  readonly cross: Point;
  readonly picked: string | null;
  readonly point: number | null;
}

/**
 * The nearest place on the edge of another zone, seen from the cross while an outline is drawn, else from the point in
 * hand: where two zones touch, no strip is left between them that would be etched as ground. Null with nothing in hand,
 * or no other zone.
 */
export function neighbourEdge({ drawing, cross, picked, point }: InHand): Point | null {
  const own = drawing.zones.find(({ id }) => id === picked);
  const from = drawing.outline ? cross : own && point !== null ? own.polygonMm[point]! : null;
  if (from === null) return null;
  const others = drawing.outline ? drawing.zones : drawing.zones.filter((zone) => zone !== own);
  const feet = others.flatMap(({ polygonMm }) =>
    polygonMm.map((corner, index) => footOn(corner, polygonMm[(index + 1) % polygonMm.length]!, from)),
  );
  return feet.toSorted((a, b) => apartMm(a, from) - apartMm(b, from))[0] ?? null;
}
