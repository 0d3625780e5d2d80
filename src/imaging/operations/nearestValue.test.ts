import { expect, it } from 'vitest';
import { nearestValue } from './nearestValue.ts';

it('reads the pixel that a place lies in, and the edge beyond it; nothing counts as 0', () => {
  const raster = {
    widthPx: 3,
    heightPx: 2,
    originMm: [10, 20],
    pxPerMm: 0.5,
    data: Float32Array.of(1, 2, 3, 4, Number.NaN, 6),
  } as const;
  const at = (...places: readonly (readonly [number, number])[]) =>
    places.map(([x, y]) => nearestValue(raster, x, y));
  expect(at([10, 20], [11.9, 21.9], [12, 20], [15.9, 22])).toEqual([1, 1, 2, 6]);
  expect(at([-5, 0], [99, 20], [99, 99], [0, 99])).toEqual([1, 3, 6, 4]);
  expect(at([13, 23])).toEqual([0]);
});
