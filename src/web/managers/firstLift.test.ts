import { expect, it } from 'vitest';
import { firstLift } from './firstLift.ts';

const marks = (...at: number[]) => Array.from({ length: 50 }, (_, column) => (at.includes(column) ? 1 : 0));

it('opens by a third where nothing is marked, or nothing near the fold', () => {
  expect(firstLift([])).toBe(0.34);
  expect(firstLift(marks())).toBe(0.34);
  expect(firstLift(marks(40, 41))).toBe(0.34);
});

it('opens less where the roll would hide what is marked', () => {
  const lift = firstLift(marks(17, 18, 19, 20));
  expect(lift).toBeLessThan(0.26);
  expect(lift).toBeGreaterThan(0.1);
});

it('does not close for marks at the very left, which no lift would show', () => {
  expect(firstLift(marks(0, 1))).toBe(0.34);
});
