import { describe, expect, it } from 'vitest';
import { normalQuantile } from './distributions.ts';
import { normalUpperTail } from './normalTail.ts';

describe('normalUpperTail', () => {
  it('is the inverse of the quantile on both sides', () => {
    for (const chance of [0.5, 0.25, 0.1, 0.025, 1e-3, 0.9, 0.999]) {
      expect(normalUpperTail(normalQuantile(1 - chance)) / chance).toBeCloseTo(1, 9);
    }
  });
  it('is right far out, where the library’s quantile no longer is: erfc(x / √2) / 2 of the C library', () => {
    const far = [
      [5, 2.866515718791946e-7],
      [7, 1.279812543885835e-12],
      [10, 7.619853024160593e-24],
    ] as const;
    for (const [score, chance] of far) expect(normalUpperTail(score) / chance).toBeCloseTo(1, 9);
  });
  it('does not jump where one formula hands over to the other', () => {
    expect(normalUpperTail(3) / normalUpperTail(3 - 1e-12)).toBeCloseTo(1, 9);
  });
  it('leaves NaN as it is', () => expect(normalUpperTail(Number.NaN)).toBeNaN());
});
