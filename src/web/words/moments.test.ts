import { afterEach, expect, test } from 'vitest';
import { dayAndTimeOf, dayOf, readBackOf, weekdayAndDayOf, weekdayAndTimeIn } from './moments.ts';
import type { Dates } from './wordChoice.ts';
import { setWordsInUse } from './wordsInUse.ts';

const english = { language: 'en', units: 'metric', dates: 'en-GB', sentences: {} } as const;
afterEach(() => setWordsInUse(english));

test.each<readonly [Dates, string, string]>([
  ['en-GB', '6 Nov 2026', 'Fri 6 Nov'],
  ['en-US', 'Nov 6, 2026', 'Fri, Nov 6'],
  ['de-DE', '6. Nov. 2026', 'Fr., 6. Nov.'],
  ['sv-SE', '2026-11-06', 'Fri 6 Nov'],
])('a day by %s', (dates, day, weekday) => {
  setWordsInUse({ ...english, dates });
  expect(dayOf('2026-11-06')).toBe(day);
  expect(dayAndTimeOf('2026-11-06T17:40')).toBe(`${day}, 17:40`);
  if (dates !== 'sv-SE') expect(weekdayAndDayOf('2026-11-06T17:40')).toBe(weekday);
});

test.each<readonly [Dates, string]>([
  ['en-GB', 'Friday 6 November 2026'],
  ['en-US', 'Friday, November 6, 2026'],
  ['de-DE', 'Freitag, 6. November 2026'],
  ['sv-SE', 'Friday, November 6, 2026'],
])('what a day field holds is read back in words by %s, whatever order the browser writes', (dates, day) => {
  setWordsInUse({ ...english, dates });
  expect(readBackOf('2026-11-06')).toBe(day);
  expect(readBackOf('2026-11-06T17:40')).toBe(`${day}, 17:40`);
});

test.each(['', '0002-11-06', '2026-13-40', 'soon'])(
  '“%s” is no day yet, and nothing is read back',
  (held) => {
    expect(readBackOf(held)).toBe('');
  },
);

test('a moment is told by the clock of its zone, as the device writes days', () => {
  const newYear = Date.parse('2026-12-31T23:30:00Z');
  expect(weekdayAndTimeIn('Europe/London', newYear)).toBe('Thu 31 Dec 23:30');
  setWordsInUse({ ...english, dates: 'de-DE' });
  expect(weekdayAndTimeIn('Europe/Berlin', newYear)).toBe('Fr., 1. Jan. 00:30');
});

test('what is no day stays as it is', () => {
  for (const dates of ['en-GB', 'de-DE'] as const) {
    setWordsInUse({ ...english, dates });
    expect(dayOf('soon')).toBe('soon');
  }
});
