import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../foundation/random.ts';
import { median, quantile } from './quantile.ts';

function bySorting(values: readonly number[], share: number): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const below = sorted[Math.floor(at)]!;
  return below + (at - Math.floor(at)) * ((sorted[Math.floor(at) + 1] ?? below) - below);
}

describe('a quantile', () => {
  it('is what sorting gives, also among ties, gaps and values in order', () => {
    const seed = 20261126;
    const random = seededRandom(seed);
    for (let round = 0; round < 2000; round++) {
      const count = 1 + Math.floor(random() * 60);
      const kinds = 1 + Math.floor(random() * 40);
      const values = Array.from({ length: count }, () => Math.floor(random() * kinds) / 7);
      if (round % 3 === 0) values.sort((a, b) => (round % 2 === 0 ? a - b : b - a));
      if (round % 5 === 0) values.push(Number.NaN);
      const share = round % 7 === 0 ? round % 2 : random();
      const given = [...values];
      expect(quantile(values, share), `seed ${seed}, round ${round}`).toBe(bySorting(values, share));
      expect(values).toEqual(given);
    }
  });

  it('is no number without values', () => {
    expect(quantile([], 0.5)).toBeNaN();
    expect(median([Number.NaN, Number.NaN])).toBeNaN();
  });
});
