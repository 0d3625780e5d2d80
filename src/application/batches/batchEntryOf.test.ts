import { expect, it } from 'vitest';
import { daysFrom } from './batchEntryOf.ts';

it('counts days on the calendar, whatever the hour and across a change of clocks', () => {
  expect(daysFrom('2026-03-01', new Date(2026, 2, 1, 23, 59))).toBe(0);
  expect(daysFrom('2026-03-01', new Date(2026, 2, 2, 0, 1))).toBe(1);
  expect(daysFrom('2026-03-28', new Date(2026, 2, 30, 0, 30))).toBe(2);
  expect(daysFrom('2026-10-24', new Date(2026, 9, 26, 0, 30))).toBe(2);
  expect(daysFrom('2024-02-28', new Date(2024, 2, 1))).toBe(2);
  expect(daysFrom('2026-03-02', new Date(2026, 2, 1))).toBe(-1);
});
