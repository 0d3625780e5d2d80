import type { Point } from '../../../science/geometry/point.ts';
import type { DarkPlace } from './darkPlaces.ts';

/** A dark right angle that could mark a corner of the work rectangle. */
export interface RightAngle {
  /** Which corner it points to, seen along the given axes: 0 top left, then clockwise. */
  readonly corner: 0 | 1 | 2 | 3;
  /** The corner that it marks, about, photograph px. */
  readonly atPx: Point;
  /** Lengths of its two arms and how wide they are, photograph px. */
  readonly armsPx: readonly [along: number, down: number];
  readonly strokePx: number;
  /** The marked corner is the inner one of a broad angle laid round the rectangle, or the outer one of drawn strokes. */
  readonly edge: 'inner' | 'outer';
  /** Share of its area off both arms: the arm of an F, or nothing. */
  readonly extra: number;
}

/** From this share of its length on, an arm is the broad bar of a mark laid round the rectangle: our protocol sheet's has 0.42. */
const broad = 0.3;
/** Our own limits for a right angle: arms alike, nearly all of its area along them, hardly any opposite. */
const limits = { unlike: 2.2, extra: 0.34, fill: 0.85, gaps: 0.12 };

/**
 * Reads a dark place as a right angle.
 * @param turn angle of the sheet's top edge, radians clockwise from the photograph's x axis.
 * @returns null where it isn't one.
 */
export function rightAngleOf({ pointsPx, cellPx }: DarkPlace, turn: number): RightAngle | null {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned = pointsPx.map(([x, y]): Point => [x * cos + y * sin, -x * sin + y * cos]);
  const [left, right, top, bottom] = boundsOf(turned);
  const along = right - left + cellPx;
  const down = bottom - top + cellPx;
  if (Math.max(along, down) > limits.unlike * Math.min(along, down)) return null;
  const strokePx = strokeOf(turned.length * cellPx * cellPx, along, down);
  const readings = ([0, 1, 2, 3] as const).map((corner) => {
    const fromLeft = corner === 0 || corner === 3;
    const fromTop = corner === 0 || corner === 1;
    let onArms = 0;
    const seenAlong = new Set<number>();
    const seenDown = new Set<number>();
    for (const [x, y] of turned) {
      const u = fromLeft ? x - left : right - x;
      const v = fromTop ? y - top : bottom - y;
      // A photograph's tilt leans the arms by a few degrees against the sheet's edge.
      const slack = 1.15 * strokePx + 0.07 * Math.max(u, v);
      if (v <= slack) seenAlong.add(Math.round(u / cellPx));
      if (u <= slack) seenDown.add(Math.round(v / cellPx));
      if (v <= slack || u <= slack) onArms++;
    }
    const gaps = Math.max(1 - (seenAlong.size * cellPx) / along, 1 - (seenDown.size * cellPx) / down);
    return { corner, fromLeft, fromTop, extra: 1 - onArms / turned.length, gaps };
  });
  const best = readings.reduce((a, b) => (b.extra + b.gaps < a.extra + a.gaps ? b : a));
  if (best.extra > limits.extra || best.gaps > limits.gaps) return null;
  if (turned.length * cellPx * cellPx > limits.fill * along * down) return null;
  const edge = strokePx > broad * Math.min(along, down) ? 'inner' : 'outer';
  const inwards = edge === 'inner' ? strokePx : 0;
  const u = best.fromLeft ? left - cellPx / 2 + inwards : right + cellPx / 2 - inwards;
  const v = best.fromTop ? top - cellPx / 2 + inwards : bottom + cellPx / 2 - inwards;
  return {
    corner: best.corner,
    atPx: [u * cos - v * sin, u * sin + v * cos],
    armsPx: [along, down],
    strokePx,
    edge,
    extra: best.extra,
  };
}

/** Width t of an angle of that area: t (a + b) − t² = area. */
function strokeOf(area: number, a: number, b: number): number {
  const sum = a + b;
  return (sum - Math.sqrt(Math.max(0, sum * sum - 4 * area))) / 2;
}

function boundsOf(points: readonly Point[]): [left: number, right: number, top: number, bottom: number] {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return [left, right, top, bottom];
}
