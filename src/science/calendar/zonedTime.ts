/** A time zone's clock, read from the zone data that the runtime carries (IANA, through Intl). */

const minuteMs = 60_000;
const dayMs = 24 * 60 * minuteMs;
const readers = new Map<string, Intl.DateTimeFormat>();

function readerOf(zone: string): Intl.DateTimeFormat {
  let reader = readers.get(zone);
  if (!reader) {
    reader = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      calendar: 'gregory',
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
    readers.set(zone, reader);
  }
  return reader;
}

/** Whether a text names a zone that the runtime knows, such as `Europe/London`; bare offsets are no zones. */
export function isTimeZone(zone: string): boolean {
  if (!/^[A-Za-z]/.test(zone)) return false;
  try {
    readerOf(zone);
    return true;
  } catch {
    return false;
  }
}

/** How far a zone's clock is ahead of UTC at a moment, ms; years 1 to 9999. */
export function zoneOffsetMs(zone: string, ms: number): number {
  const read: Record<string, number> = {};
  for (const { type, value } of readerOf(zone).formatToParts(ms)) read[type] = Number(value);
  const { year, month, day, hour, minute, second } = read;
  const wall = Date.UTC(year!, month! - 1, day!, hour!, minute!, second!);
  return wall - Math.floor(ms / 1000) * 1000;
}

/** What a zone's clock and calendar show. */
export interface WallClock {
  /** ISO 8601 day. */
  readonly date: string;
  /** Since the clock's midnight, 0 to below 1440. */
  readonly minutes: number;
}

/** The clock and calendar of a zone at a moment, ms since 1970. */
export function wallClock(zone: string, ms: number): WallClock {
  const shifted = new Date(ms + zoneOffsetMs(zone, ms));
  return {
    date: shifted.toISOString().slice(0, 10),
    minutes: shifted.getUTCHours() * 60 + shifted.getUTCMinutes(),
  };
}

/**
 * The moment, ms since 1970, at which a zone's clock shows so many minutes (0 to 1440) after midnight of a day.
 * An hour that the clock goes through twice is taken at its first or its last passage; one that it leaps over at the
 * moment of the leap, whichever is asked for.
 */
export function momentAt(zone: string, date: string, minutes: number, passage: 'first' | 'last'): number {
  const wall = Date.parse(`${date}T00:00:00Z`) + minutes * minuteMs;
  // no clock is further than 14 h from UTC: these two lie on either side of the moment
  const day = Math.floor(wall / dayMs);
  const before = offsetAtDay(zone, day - 1);
  const after = offsetAtDay(zone, day + 2);
  if (before === after) return wall - before;
  const passages = [wall - before, wall - after].filter(
    (moment) => moment + zoneOffsetMs(zone, moment) === wall,
  );
  if (passages.length > 0) return passage === 'first' ? Math.min(...passages) : Math.max(...passages);
  return leapBetween(zone, wall - Math.max(before, after), wall - Math.min(before, after));
}

/** Offsets at midnight UTC, by zone and day since 1970: reading one takes long, and calendars ask for the same again. */
const dayOffsets = new Map<string, number>();
const mostKept = 20_000;

function offsetAtDay(zone: string, day: number): number {
  const key = `${zone} ${day}`;
  let offset = dayOffsets.get(key);
  if (offset === undefined) {
    if (dayOffsets.size >= mostKept) dayOffsets.clear();
    offset = zoneOffsetMs(zone, day * dayMs);
    dayOffsets.set(key, offset);
  }
  return offset;
}

/** When the clock leaps between two moments, to the second. */
function leapBetween(zone: string, early: number, late: number): number {
  const offset = zoneOffsetMs(zone, early);
  let [from, to] = [early, late];
  while (to - from > 1000) {
    const middle = from + Math.floor((to - from) / 2000) * 1000;
    if (zoneOffsetMs(zone, middle) === offset) from = middle;
    else to = middle;
  }
  return to;
}

/** The ISO day so many days after another. */
export function daysAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);
}

/** 0 for a Monday to 6 for a Sunday. */
export function weekdayOf(date: string): number {
  return (new Date(`${date}T00:00:00Z`).getUTCDay() + 6) % 7;
}
