import { isoDayWords, isoMomentWords } from '../../science/calendar/dateWords.ts';
import { wallClock } from '../../science/calendar/zonedTime.ts';
import { clockWords } from '../../studio/days/zoneWords.ts';
import { wordsInUse } from '../../words/wordsInUse.ts';

/** An ISO day, or the day of an ISO moment by its own clock: `26 Nov 2026` as the device writes days. */
export function dayOf(iso: string): string {
  const { dates } = wordsInUse();
  // Sheets and screens agree where days are written as sheets write them.
  if (dates === 'en-GB') return isoDayWords(iso);
  const day = /^\d{4}-\d\d-\d\d/.exec(iso)?.[0];
  if (day === undefined) return iso;
  return dates === 'sv-SE' ? day : writtenBy({ day: 'numeric', month: 'short', year: 'numeric' }, day);
}

/** An ISO moment by its own clock, to the minute: `26 Nov 2026, 17:40` as the device writes days. */
export function dayAndTimeOf(iso: string): string {
  if (wordsInUse().dates === 'en-GB') return isoMomentWords(iso);
  const time = /T(\d\d:\d\d)/.exec(iso)?.[1];
  return time === undefined ? dayOf(iso) : `${dayOf(iso)}, ${time}`;
}

/** An ISO day of these weeks with its weekday: `Thu 26 Nov`. */
export function weekdayAndDayOf(iso: string): string {
  const day = iso.slice(0, 10);
  return plainly(writtenBy({ weekday: 'short', day: 'numeric', month: 'short' }, day));
}

/**
 * What a day field (`2026-11-06`) or a day-and-time field (`2026-11-06T17:40`) holds, in words that leave no doubt which
 * number is the month: `Friday 6 November 2026, 17:40`. Empty while it holds no day.
 */
export function readBackOf(held: string): string {
  const [, day, time] = /^([1-9]\d{3}-\d\d-\d\d)(?:T(\d\d:\d\d))?/.exec(held) ?? [];
  if (day === undefined || Number.isNaN(Date.parse(`${day}T00:00:00Z`))) return '';
  const words = plainly(writtenBy({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }, day));
  return time === undefined ? words : `${words}, ${time}`;
}

/** A moment, ms since 1970, by the clock of a zone, with its weekday: `Fri 27 Nov 17:00`. */
export function weekdayAndTimeIn(zone: string, ms: number): string {
  return `${weekdayAndDayOf(wallClock(zone, ms).date)} ${clockWords(zone, ms)}`;
}

/** Engines differ in the comma after a British weekday. */
function plainly(day: string): string {
  return wordsInUse().dates === 'en-GB' ? day.replace(',', '') : day;
}

function writtenBy(options: Intl.DateTimeFormatOptions, day: string): string {
  const { dates, language } = wordsInUse();
  const locale = dates === 'sv-SE' && options.weekday ? language : dates;
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  );
}
