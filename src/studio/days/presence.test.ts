import { expect, test } from 'vitest';
import { hoursOn, spansOn } from './presence.ts';

const at = (iso: string) => Date.parse(iso);

test('an hour that the clock goes through twice counts twice, one that it leaps over is none', () => {
  const night = [{ from: '00:30', to: '01:30' }];
  // London 2027: back at 01:00 UTC on 31 October, on at 01:00 UTC on 28 March
  expect(spansOn('Europe/London', '2027-10-31', night)).toEqual([
    { from: at('2027-10-30T23:30:00Z'), to: at('2027-10-31T01:30:00Z') },
  ]);
  expect(spansOn('Europe/London', '2027-03-28', [{ from: '01:00', to: '02:00' }])).toEqual([]);
  expect(spansOn('Europe/London', '2027-03-28', night)).toEqual([
    { from: at('2027-03-28T00:30:00Z'), to: at('2027-03-28T01:00:00Z') },
  ]);
});

test('a day of its own hours goes by them, none at all being away; any other goes by its weekday', () => {
  const open = [{ from: '09:00', to: '17:00' }];
  const week = [open, open, open, open, open, [], []];
  const away = [{ date: '2026-11-24', hours: [], note: '' }];
  expect(hoursOn('2026-11-24', week, away)).toEqual([]);
  expect(hoursOn('2026-11-25', week, away)).toEqual(open);
  expect(hoursOn('2026-11-28', week, away)).toEqual([]);
});
