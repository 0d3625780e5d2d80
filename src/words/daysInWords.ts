import { wordsInUse } from './wordsInUse.ts';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
/** A day as sheets write it: `26 Nov 2026`, `Thu 26 Nov`. */
const aDay = new RegExp(
  `(?:\\b(${weekdays.join('|')}) )?\\b(\\d{1,2}) (${months.join('|')})\\b(?: (\\d{4})\\b)?`,
  'g',
);

/** A day, or a moment of it: `26 Nov 2026, 17:40`, `Thu 26 Nov 17:40`. */
export const aMoment = new RegExp(`${aDay.source}(?:,? \\d\\d:\\d\\d\\b)?`, 'g');

/** The days in a text, `26 Nov 2026` or `Thu 26 Nov`, as the device that asks writes days. */
export function daysInWords(text: string): string {
  if (wordsInUse().dates === 'en-GB') return text;
  return text.replace(aDay, (_, weekday: string | undefined, day: string, month: string, year?: string) =>
    dayWords(Number(day), months.indexOf(month), year, weekday),
  );
}

function dayWords(day: number, month: number, year: string | undefined, weekday: string | undefined): string {
  const { dates, language } = wordsInUse();
  if (dates === 'sv-SE' && year !== undefined && weekday === undefined) {
    return `${year}-${String(month + 1).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  }
  const locale = dates === 'sv-SE' ? language : dates;
  const format = new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'short',
    ...(year === undefined ? {} : { year: 'numeric' }),
    timeZone: 'UTC',
  });
  // A leap year, so that 29 February is a day of it.
  const told = format.format(Date.UTC(Number(year ?? 2024), month, day));
  return weekday === undefined ? told : `${weekdayWords(locale, weekday)}, ${told}`;
}

function weekdayWords(locale: string, weekday: string): string {
  // 1 January 2024 was a Monday.
  const day = Date.UTC(2024, 0, 1 + weekdays.indexOf(weekday));
  return new Intl.DateTimeFormat(locale, { weekday: 'short', timeZone: 'UTC' }).format(day);
}
