import type { Point } from '../../science/geometry/point.ts';
import { apartMm, footOn } from './laidAgainst.ts';

/** A place kept on the stone and to hundredths of a millimetre, which is finer than any hand. */
export function onStone([x, y]: Point, stoneMm: Point): Point {
  const kept = (value: number, size: number) =>
    Math.round(Math.min(Math.max(value, 0), size) * 100) / 100 || 0;
  return [kept(x, stoneMm[0]), kept(y, stoneMm[1])];
}

/** The outline with one point put elsewhere. */
export function withPointAt(outline: readonly Point[], index: number, toMm: Point): readonly Point[] {
  return outline.map((point, at) => (at === index ? toMm : point));
}

/** The outline with a further point after `index`. */
export function withPointAfter(outline: readonly Point[], index: number, atMm: Point): readonly Point[] {
  return [...outline.slice(0, index + 1), atMm, ...outline.slice(index + 1)];
}

/** The outline without one point; the same outline where it has only three, which enclose the least there is. */
export function withoutPoint(outline: readonly Point[], index: number): readonly Point[] {
  return outline.length <= 3 ? outline : outline.filter((_, at) => at !== index);
}

/** Halfway along the side after `index`. */
export function middleAfter(outline: readonly Point[], index: number): Point {
  const a = outline[index]!;
  const b = outline[(index + 1) % outline.length]!;
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** The outline moved as far as the stone allows, its shape kept. */
export function movedOutline(outline: readonly Point[], byMm: Point, stoneMm: Point): readonly Point[] {
  const by = [0, 1].map((axis) => {
    const values = outline.map((point) => point[axis]!);
    const room = [-Math.min(...values), stoneMm[axis]! - Math.max(...values)] as const;
    return Math.min(Math.max(byMm[axis]!, Math.min(room[0], 0)), Math.max(room[1], 0));
  });
  return outline.map(([x, y]) => onStone([x + by[0]!, y + by[1]!], stoneMm));
}

/** The point of an outline nearest to a place, and how far. */
export function nearestPoint(outline: readonly Point[], placeMm: Point): { index: number; mm: number } {
  return outline.reduce(
    (best, point, index) => {
      const mm = apartMm(point, placeMm);
      return mm < best.mm ? { index, mm } : best;
    },
    { index: -1, mm: Number.POSITIVE_INFINITY },
  );
}

/** The side of a closed outline nearest to a place: the point before it, where on it, and how far. */
export function nearestSide(
  outline: readonly Point[],
  placeMm: Point,
): { after: number; at: Point; mm: number } {
  return outline.reduce(
    (best, a, after) => {
      const at = footOn(a, outline[(after + 1) % outline.length]!, placeMm);
      const mm = apartMm(at, placeMm);
      return mm < best.mm ? { after, at, mm } : best;
    },
    { after: -1, at: placeMm, mm: Number.POSITIVE_INFINITY },
  );
}
