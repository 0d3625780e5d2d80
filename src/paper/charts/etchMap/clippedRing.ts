import type { Point } from '../../../science/geometry/point.ts';
import type { Box } from '../strengthHatching.ts';

/**
 * A ring cut to a box, side by side (Sutherland & Hodgman 1974, doi 10.1145/360767.360802). A ring that falls apart
 * stays one, its pieces joined along the box's sides, which changes no area.
 * @returns fewer than three points where nothing is left.
 */
export function clippedRing(ring: readonly Point[], box: Box): readonly Point[] {
  const cut = (points: readonly Point[], axis: 0 | 1, limit: number, keepsAbove: boolean): Point[] =>
    points.flatMap((point, index): Point[] => {
      const before = points[(index + points.length - 1) % points.length]!;
      const kept = (value: Point) => (keepsAbove ? value[axis] >= limit : value[axis] <= limit);
      const crossing = (): Point => {
        const share = (limit - before[axis]) / (point[axis] - before[axis]);
        return [before[0] + share * (point[0] - before[0]), before[1] + share * (point[1] - before[1])];
      };
      if (kept(point)) return kept(before) ? [point] : [crossing(), point];
      return kept(before) ? [crossing()] : [];
    });
  return cut(
    cut(cut(cut(ring, 0, box.left, true), 0, box.right, false), 1, box.top, true),
    1,
    box.bottom,
    false,
  );
}
