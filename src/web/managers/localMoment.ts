import { dayAndTimeOf, dayOf, weekdayAndDayOf } from '../words/moments.ts';

/** A moment (ISO, any zone) as a day-and-time field where the reader is holds it; empty for null. */
export function localText(iso: string | null): string {
  if (iso === null) return '';
  const moment = new Date(iso);
  if (Number.isNaN(moment.getTime())) return '';
  const minutesAhead = -moment.getTimezoneOffset();
  return new Date(moment.getTime() + minutesAhead * 60_000).toISOString().slice(0, 16);
}

/** What a day-and-time field holds as a moment (ISO, UTC); null where it holds none. */
export function momentOf(local: string): string | null {
  const moment = new Date(local);
  return local === '' || Number.isNaN(moment.getTime()) ? null : moment.toISOString();
}

/** A moment (ISO) as a day where the reader is: `26 Nov 2026`. */
export function dayText(iso: string): string {
  return dayOf(localText(iso));
}

/** A moment (ISO) as a day of these weeks and a time where the reader is: `Thu 26 Nov, 17:40`. */
export function momentText(iso: string): string {
  const local = localText(iso);
  return local && `${weekdayAndDayOf(local)}, ${local.slice(11)}`;
}

/** A moment (ISO) as `momentText` says it while it is of this year, else with its year: `2 Dec 2025, 12:32`. */
export function datedMomentText(iso: string, now: Date): string {
  const local = localText(iso);
  return local.slice(0, 4) === localText(now.toISOString()).slice(0, 4)
    ? momentText(iso)
    : dayAndTimeOf(local);
}
