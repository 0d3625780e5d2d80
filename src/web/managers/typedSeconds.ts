/**
 * A time as typed: `1:30` is minutes and seconds, `90` is seconds.
 * @returns whole seconds; null where nothing is typed, NaN where it is no time.
 */
export function typedSeconds(text: string): number | null {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  const [, minutes, seconds] = /^(?:(\d{1,4}):)?(\d{1,5})$/.exec(trimmed) ?? [];
  if (seconds === undefined) return Number.NaN;
  if (minutes === undefined) return Number(seconds);
  return seconds.length === 2 && Number(seconds) < 60 ? 60 * Number(minutes) + Number(seconds) : Number.NaN;
}
