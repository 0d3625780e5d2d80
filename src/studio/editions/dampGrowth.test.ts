import { expect, test } from 'vitest';
import { dampGrowth } from './dampGrowth.ts';

const figures = ({ low, value, high }: { low: number; value: number; high: number }) =>
  [low, value, high].map((mm) => Math.round(mm * 1000) / 1000);

test('a damp sheet grows little along its fibres and more across, and either may be which where they are not known', () => {
  const along = dampGrowth([500, 400], 'long');
  expect(figures(along.long)).toEqual([1, 1.75, 2.5]);
  expect(figures(along.short)).toEqual([4, 6, 10]);
  const across = dampGrowth([400, 500], 'short');
  expect(figures(across.long)).toEqual([5, 7.5, 12.5]);
  expect(figures(across.short)).toEqual([0.8, 1.4, 2]);
  const unknown = dampGrowth([500, 400], 'unknown');
  expect(figures(unknown.long)).toEqual([1, 6.75, 12.5]);
  expect(figures(unknown.short)).toEqual([0.8, 5.4, 10]);
});
