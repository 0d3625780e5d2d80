import { expect, it } from 'vitest';
import { readingNoise } from './readingNoise.ts';

it('pools what was read twice: the root of half the mean square difference', () => {
  const noise = readingNoise([[0.5, 0.51], [0.2, 0.2], [0.8, 0.77], [0.4]])!;
  expect(noise.degreesOfFreedom).toBe(3);
  expect(noise.sigma).toBeCloseTo(Math.sqrt((0.01 ** 2 + 0 + 0.03 ** 2) / 6), 12);
  expect(noise.low).toBeLessThan(noise.sigma);
  expect(noise.high).toBeGreaterThan(3 * noise.sigma);
});

it('nothing read twice tells nothing', () => {
  expect(readingNoise([])).toBeNull();
  expect(readingNoise([[0.5], [0.6]])).toBeNull();
});
