/** How many are kept: of the newest days, and the newest of each of the newest weeks and months that have any. Our rule. */
export const keptCopies = { days: 7, weeks: 4, months: 12 } as const;

const dayMs = 86_400_000;

/** The Monday of a day's week, ISO. */
function weekOf(day: string): string {
  const ms = Date.parse(`${day}T00:00:00Z`);
  const sinceMonday = (new Date(ms).getUTCDay() + 6) % 7;
  return new Date(ms - sinceMonday * dayMs).toISOString().slice(0, 10);
}

/**
 * Which daily copies may go. Counted are copies that are there, not days that passed: after a long break nothing goes.
 * @param days ISO days, each once, in any order
 * @returns those to be removed, oldest first
 */
export function copiesToRemove(days: readonly string[]): readonly string[] {
  const newest = [...days].sort().reverse();
  const keep = new Set(newest.slice(0, keptCopies.days));
  const keepNewestOf = (span: (day: string) => string, count: number) => {
    const first = new Map<string, string>();
    for (const day of newest) if (!first.has(span(day))) first.set(span(day), day);
    for (const day of [...first.values()].slice(0, count)) keep.add(day);
  };
  keepNewestOf(weekOf, keptCopies.weeks);
  keepNewestOf((day) => day.slice(0, 7), keptCopies.months);
  return newest.filter((day) => !keep.has(day)).reverse();
}
