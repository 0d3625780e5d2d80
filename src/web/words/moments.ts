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
  const words = writtenBy({ weekday: 'short', day: 'numeric', month: 'short' }, day);
  return wordsInUse().dates === 'en-GB' ? words.replace(',', '') : words;
}

/** A moment, ms since 1970, by the clock of a zone, with its weekday: `Fri 27 Nov 17:00`. */
export function weekdayAndTimeIn(zone: string, ms: number): string {
  return `${weekdayAndDayOf(wallClock(zone, ms).date)} ${clockWords(zone, ms)}`;
}

function writtenBy(options: Intl.DateTimeFormatOptions, day: string): string {
  const { dates, language } = wordsInUse();
  const locale = dates === 'sv-SE' && options.weekday ? language : dates;
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  );
}
