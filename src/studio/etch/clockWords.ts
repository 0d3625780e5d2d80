/** Seconds as minutes and seconds, `130` → `2:10`; rounded to whole seconds, 0 or more. */
export function minutesSeconds(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** What a planned zone, or a part of a split one, says of its contact. */
interface ContactTimes {
  readonly contactSeconds: { readonly low: number; readonly wanted: number | null } | null;
  readonly layTo: number | null;
  readonly endsAt: number | null;
}

/**
 * How long the etch stays: as scheduled, else as wanted, else the least; `2:05 min`, `at least 1:30 min`.
 * @returns null where there is no rule.
 */
export function contactWords({ contactSeconds, layTo, endsAt }: ContactTimes): string | null {
  if (!contactSeconds) return null;
  if (layTo !== null && endsAt !== null) return `${minutesSeconds(endsAt - layTo)} min`;
  const { low, wanted } = contactSeconds;
  return wanted === null ? `at least ${minutesSeconds(low)} min` : `${minutesSeconds(wanted)} min`;
}
