import { expect, it } from 'vitest';
import { inkForPulls, startingSoftPercent } from './inkMix.ts';

it('starts soft for light work, stiff for heavy, between where both are', () => {
  expect(startingSoftPercent({ light: 1, middle: 0, dark: 0 })).toBe(100);
  expect(startingSoftPercent({ light: 0, middle: 2, dark: 0 })).toBe(70);
  expect(startingSoftPercent({ light: 0, middle: 0, dark: 1 })).toBe(0);
  expect(startingSoftPercent({ light: 1, middle: 1, dark: 1 })).toBeCloseTo(170 / 3, 9);
  expect(startingSoftPercent({ light: 0, middle: 0, dark: 0 })).toBeNull();
});

it('reckons the slab once and the film for every pull', () => {
  const none = inkForPulls(50_000, 0);
  const fifteen = inkForPulls(50_000, 15);
  expect([none.low, none.high]).toEqual([30, 60]);
  expect(fifteen.low).toBeCloseTo(30.75, 9);
  expect(fifteen.high).toBeCloseTo(61.5, 9);
});
