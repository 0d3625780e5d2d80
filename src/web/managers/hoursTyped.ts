import type { DayException, HourSpan } from '../../records/studio.ts';
import { say } from '../words/say.ts';

/** Hours as one writes them: `09:00–13:00, 14:00–17:30`; empty for none. */
export function hoursText(hours: readonly HourSpan[]): string {
  return hours.map(({ from, to }) => `${from}–${to}`).join(', ');
}

/** What is written as hours (`9-13, 14-17:30` will do; `closed`, `away` or nothing: none); null where it isn't. */
export function typedHours(text: string): readonly HourSpan[] | null {
  const written = text.trim();
  if (written === '' || /^(closed|away)$/i.test(written)) return [];
  const spans: HourSpan[] = [];
  for (const part of written.split(/[,;]/)) {
    const [from, to, more] = part.split(/[-–—]/).map((clock) => typedClock(clock.trim()));
    if (!from || !to || more !== undefined || from >= to) return null;
    const last = spans.at(-1);
    if (last && last.to > from) return null;
    spans.push({ from, to });
  }
  return spans;
}

function typedClock(text: string): string | null {
  const read = /^(\d{1,2})(?:[:.](\d{2}))?$/.exec(text);
  if (!read) return null;
  const [hours, minutes] = [Number(read[1]), Number(read[2] ?? 0)];
  if (minutes > 59 || hours * 60 + minutes > 24 * 60) return null;
  return `${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`;
}

/** Days that differ, as one writes them: `2026-12-25 closed; 2026-12-28 10:00–12:00`. */
export function exceptionsText(days: readonly DayException[]): string {
  return days.map(({ date, hours }) => `${date} ${hoursText(hours) || say('closed')}`).join('; ');
}

/**
 * What is written as days that differ; null where it isn't.
 * @param kept those that were there: a day keeps its note
 */
export function typedExceptions(
  text: string,
  kept: readonly DayException[] = [],
): readonly DayException[] | null {
  const days: DayException[] = [];
  for (const part of text.split(';').map((one) => one.trim())) {
    if (part === '') continue;
    const [date, ...rest] = part.split(/\s+/);
    const hours = typedHours(rest.join(' '));
    const real = /^\d{4}-\d{2}-\d{2}$/.test(date!) && !Number.isNaN(Date.parse(date!));
    if (hours === null || !real || days.some((one) => one.date === date)) return null;
    days.push({ date: date!, hours, note: kept.find((one) => one.date === date)?.note ?? '' });
  }
  return days;
}
