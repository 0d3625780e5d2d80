import polygonClipping, { type Polygon } from 'polygon-clipping';
import type { Point } from './point.ts';
import { containsPoint } from './polygon.ts';

/** A simple polygon, not closed, in any one unit. */
type Outline = readonly Point[];

/**
 * Area that several simple polygons cover together, overlaps counted once, in the square of their unit.
 * Computed exactly by polygon clipping (Martínez, Rueda & Feito 2009, doi 10.1016/j.advengsoft.2008.11.013, as the library states).
 * @param outlines each at least three points, not self-crossing; none gives 0.
 */
export function unionArea(outlines: readonly Outline[]): number {
  const [first, ...rest] = outlines.map(asRing);
  return first ? areaOf(polygonClipping.union(first, ...rest)) : 0;
}

/** Area that two simple polygons share, in the square of their unit. */
export function sharedArea(a: Outline, b: Outline): number {
  return areaOf(polygonClipping.intersection(asRing(a), asRing(b)));
}

/**
 * Shortest distance between the edges of two simple polygons, 0 where they touch or overlap, in their unit.
 * @param within a distance beyond which nobody asks how far: the answer is then infinite, and sooner there.
 */
export function outlineDistance(a: Outline, b: Outline, within = Number.POSITIVE_INFINITY): number {
  if (boxesApart(a, b) >= within) return Number.POSITIVE_INFINITY;
  const edges = edgesOf(b);
  let least = within;
  for (const one of edgesOf(a)) {
    for (const other of edges) {
      // most pairs lie farther apart than the nearest so far: their boxes say so at once
      if (one.left - other.right > least || other.left - one.right > least) continue;
      if (one.top - other.bottom > least || other.top - one.bottom > least) continue;
      if (segmentsCross(one.from, one.to, other.from, other.to)) return 0;
      least = Math.min(
        least,
        distanceToSegment(one.from, other.from, other.to),
        distanceToSegment(one.to, other.from, other.to),
        distanceToSegment(other.from, one.from, one.to),
        distanceToSegment(other.to, one.from, one.to),
      );
    }
  }
  const inside = containsPoint(a, b[0]!) || containsPoint(b, a[0]!);
  if (least > 1e-9 && inside) return 0;
  return least < within ? least : Number.POSITIVE_INFINITY;
}

/** How far the boxes round two outlines lie apart along the axis on which they lie farther apart; negative where they overlap. */
function boxesApart(a: Outline, b: Outline): number {
  const along = (axis: 0 | 1) => {
    const [ofA, ofB] = [a.map((point) => point[axis]), b.map((point) => point[axis])];
    return Math.max(Math.min(...ofA) - Math.max(...ofB), Math.min(...ofB) - Math.max(...ofA));
  };
  return Math.max(along(0), along(1));
}

interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function edgesOf(outline: Outline): Edge[] {
  return outline.map((from, index) => {
    const to = outline[(index + 1) % outline.length]!;
    return {
      from,
      to,
      left: Math.min(from[0], to[0]),
      right: Math.max(from[0], to[0]),
      top: Math.min(from[1], to[1]),
      bottom: Math.max(from[1], to[1]),
    };
  });
}

function asRing(outline: Outline): Polygon {
  return [outline.map(([x, y]): [number, number] => [x, y])];
}

function areaOf(polygons: readonly Polygon[]): number {
  const ringArea = (ring: readonly Point[]) =>
    Math.abs(
      ring.reduce((sum, [x, y], index) => {
        const [nextX, nextY] = ring[(index + 1) % ring.length]!;
        return sum + x * nextY - nextX * y;
      }, 0) / 2,
    );
  return polygons.reduce((sum, [outer, ...holes]) => {
    const holeArea = holes.reduce((inner, hole) => inner + ringArea(hole), 0);
    return sum + ringArea(outer!) - holeArea;
  }, 0);
}

function distanceToSegment(point: Point, from: Point, to: Point): number {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const length2 = dx * dx + dy * dy;
  const along = length2 === 0 ? 0 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / length2;
  const clamped = Math.min(1, Math.max(0, along));
  return Math.hypot(point[0] - from[0] - clamped * dx, point[1] - from[1] - clamped * dy);
}

function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
