import fc from 'fast-check';
import type { Corners, Point } from '../../src/science/geometry/point.ts';

/** A coordinate in mm on a stone, in hundredths, so that shrinking ends at round numbers. */
export const millimetres = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((hundredths) => hundredths / 100);

export const pointMm: fc.Arbitrary<Point> = fc.tuple(millimetres(0, 400), millimetres(0, 500));

/** An outline that never crosses itself: points round a centre at rising angles, near or far. */
export const starOutline: fc.Arbitrary<Point[]> = fc
  .tuple(pointMm, fc.array(millimetres(5, 80), { minLength: 3, maxLength: 12 }))
  .map(([[x, y], reaches]) =>
    reaches.map((reach, i): Point => {
      const angle = (2 * Math.PI * i) / reaches.length;
      return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
    }),
  );

/** Four corners of a rectangle each pulled some way: convex, clockwise with y down. */
export const quadrangle: fc.Arbitrary<Corners> = fc
  .tuple(
    pointMm,
    millimetres(100, 400),
    millimetres(100, 400),
    fc.array(millimetres(-20, 20), { minLength: 8, maxLength: 8 }),
  )
  .map(([[x, y], width, height, pull]) =>
    (
      [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ] as const
    ).map(([dx, dy], i): Point => [x + dx + pull[2 * i]!, y + dy + pull[2 * i + 1]!]),
  ) as fc.Arbitrary<unknown> as fc.Arbitrary<Corners>;

/** Turned about the origin by an angle in radians. */
export function turned(outline: readonly Point[], angle: number): Point[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return outline.map(([x, y]) => [c * x - s * y, s * x + c * y]);
}

/** Left is right. */
export function inTheGlass(outline: readonly Point[]): Point[] {
  return outline.map(([x, y]) => [-x, y]);
}
