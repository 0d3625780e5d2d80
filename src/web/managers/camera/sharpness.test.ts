import { expect, test } from 'vitest';
import { drawnCode, greyFrame } from './cameraChecks.testing.ts';
import { wholeFrame } from './cameraFrame.ts';
import { fineShareOf, fineStructure, laplacianVariance } from './sharpness.ts';

test('the variance of the Laplacian of a chequer is what the four neighbours make of it', () => {
  const frame = greyFrame(6, 6, (x, y) => ((x + y) % 2 === 0 ? 110 : 100));
  // every pixel differs by 10 from all four neighbours: ±40, mean 0
  expect(laplacianVariance(frame, wholeFrame(frame))).toBeCloseTo(1600, 2);
});

test('an even slope of light has no sharpness, and a box without inner pixels neither', () => {
  const frame = greyFrame(40, 40, (x, y) => 40 + 2 * x + y);
  expect(laplacianVariance(frame, wholeFrame(frame))).toBeCloseTo(0, 3);
  expect(laplacianVariance(frame, { left: 0, top: 0, right: 1, bottom: 1 })).toBe(0);
});

test('a picture drawn at twice the size has lost its fine half', () => {
  const sharp = fineStructure(greyFrame(128, 128, drawnCode))!;
  const soft = fineStructure(
    greyFrame(128, 128, (x, y) => {
      const [i, j] = [Math.floor(x / 4), Math.floor(y / 4)];
      const [u, v] = [x / 4 - i, y / 4 - j];
      const row = (at: number) => drawnCode(i, at) * (1 - u) + drawnCode(i + 1, at) * u;
      return row(j) * (1 - v) + row(j + 1) * v;
    }),
  )!;
  expect(sharp.share).toBeGreaterThan(1);
  expect(soft.share).toBeLessThan(0.2);
});

test('where nothing is drawn nothing is judged, and parts that hold most speak for all', () => {
  expect(fineStructure(greyFrame(64, 64, () => 180))).toBeNull();
  expect(fineShareOf([null, null])).toBeNull();
  const part = (share: number, coarse: number) => ({ share, coarse });
  expect(fineShareOf([part(0.05, 7), part(0.5, 900), part(2, 8), null])).toBe(0.5);
});
