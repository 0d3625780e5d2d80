import type { HourSpan, StudioDraft, WeekHours } from '../../records/studio.ts';

const span = (from: string, to: string): readonly HourSpan[] => [{ from, to }];
const none: readonly HourSpan[] = [];

/** Monday first. */
function week(weekday: readonly HourSpan[], off: readonly number[], saturday = none): WeekHours {
  return [0, 1, 2, 3, 4].map((day) => (off.includes(day) ? none : weekday)).concat([saturday, none]);
}

/** When the shed on the creek is open and who of the three is there. Invented. */
export const sampleHours: StudioDraft = {
  timeZone: 'Europe/London',
  open: week(span('09:00', '17:30'), [], span('10:00', '14:00')),
  exceptions: [
    { date: '2026-12-25', hours: [], note: 'Christmas' },
    { date: '2026-12-26', hours: [], note: 'Boxing Day' },
    { date: '2027-01-01', hours: [], note: 'New Year' },
  ],
  people: [
    {
      name: 'the printer',
      initials: 'P.R.',
      week: week(span('09:00', '17:30'), [], span('10:00', '14:00')),
      exceptions: [],
    },
    { name: 'the apprentice', initials: 'J.O.', week: week(span('09:00', '16:00'), [0]), exceptions: [] },
    {
      name: 'a visiting artist',
      initials: 'A.T.',
      week: week(span('11:00', '17:30'), [0, 1, 2]),
      exceptions: [],
    },
  ],
  times: [],
};
