import polygonClipping, { type Polygon } from 'polygon-clipping';
import type { Point } from './point.ts';

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
 */
export function outlineDistance(a: Outline, b: Outline): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [index, start] of a.entries()) {
    const end = a[(index + 1) % a.length]!;
    for (const [other, from] of b.entries()) {
      const to = b[(other + 1) % b.length]!;
      if (segmentsCross(start, end, from, to)) return 0;
      least = Math.min(
        least,
        distanceToSegment(start, from, to),
        distanceToSegment(end, from, to),
        distanceToSegment(from, start, end),
        distanceToSegment(to, start, end),
      );
    }
  }
  return least > 1e-9 && sharedArea(a, b) > 0 ? 0 : least;
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
