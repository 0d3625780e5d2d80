import type { DayException, HourSpan, StudioDraft, WeekHours } from '../../records/studio.ts';
import { daysAfter, momentAt, wallClock, weekdayOf } from '../../science/calendar/zonedTime.ts';
import { inBoth, type Span } from './spans.ts';

/** When somebody is in the open room. */
export interface Presence {
  readonly initials: string;
  readonly spans: readonly Span[];
}

/** The hours of a day: its exception's, else its weekday's. */
export function hoursOn(
  date: string,
  week: WeekHours,
  exceptions: readonly DayException[],
): readonly HourSpan[] {
  const exception = exceptions.find((one) => one.date === date);
  return exception ? exception.hours : (week[weekdayOf(date)] ?? []);
}

/**
 * Hours by the clock as stretches of time. An hour that the clock leaps over in spring is none; one that it goes
 * through twice in autumn counts twice.
 */
export function spansOn(zone: string, date: string, hours: readonly HourSpan[]): readonly Span[] {
  return hours
    .map(({ from, to }) => ({
      from: momentAt(zone, date, minutesOf(from), 'first'),
      to: momentAt(zone, date, minutesOf(to), 'last'),
    }))
    .filter(({ from, to }) => from < to);
}

/** Everybody's time in the open room between two moments, in order; in the order of the studio's people. */
export function presenceOf(studio: StudioDraft, between: Span): readonly Presence[] {
  const { timeZone, open, exceptions, people } = studio;
  const days: string[] = [];
  const last = wallClock(timeZone, between.to).date;
  for (let date = wallClock(timeZone, between.from).date; date <= last; date = daysAfter(date, 1)) {
    days.push(date);
  }
  const room = days.flatMap((date) => spansOn(timeZone, date, hoursOn(date, open, exceptions)));
  const inside = inBoth(joined(room), [between]);
  return people.map(({ initials, week, exceptions: away }) => ({
    initials,
    spans: inBoth(inside, joined(days.flatMap((date) => spansOn(timeZone, date, hoursOn(date, week, away))))),
  }));
}

/** Spans in order, with those that touch made one, as at midnight. */
function joined(spans: readonly Span[]): readonly Span[] {
  const whole: Span[] = [];
  for (const span of spans) {
    const last = whole.at(-1);
    if (last && span.from <= last.to)
      whole[whole.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else whole.push(span);
  }
  return whole;
}

/** Minutes from midnight of `HH:MM`, 0 to 1440. */
export function minutesOf(clock: string): number {
  const [hours, minutes] = clock.split(':').map(Number);
  return hours! * 60 + minutes!;
}
