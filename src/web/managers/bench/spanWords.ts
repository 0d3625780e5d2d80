import type { ExpectedTime, Spent } from '../../../records/bench.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';

const minute = 60;
const hour = 3600;
const day = 24 * hour;

/** A time as a bench clock shows it: `1:05` under an hour, `3 h 20` under two days, else `2 d 4 h`. */
export function clockOf(seconds: number): string {
  if (seconds < hour) return minutesSeconds(Math.floor(seconds));
  if (seconds < 2 * day) {
    const whole = Math.floor(seconds / minute);
    return `${Math.floor(whole / 60)} h ${String(whole % 60).padStart(2, '0')}`;
  }
  const hours = Math.floor(seconds / hour);
  return `${Math.floor(hours / 24)} d ${hours % 24} h`;
}

/** A time in words that a voice can say: `50 seconds`, `one minute`, `2 minutes`, `3 hours`. */
export function spokenSpan(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < minute) return whole === 1 ? 'one second' : `${whole} seconds`;
  const [unit, name] = whole < hour ? [minute, 'minute'] : whole < 2 * day ? [hour, 'hour'] : [day, 'day'];
  const count = Math.floor(whole / unit);
  const rest = whole < hour ? whole % minute : 0;
  const words = count === 1 ? `one ${name}` : `${count} ${name}s`;
  return rest === 0 ? words : `${words} ${rest}`;
}

/** What is expected, in words: `1:00 to 3:00`, `about 0:50`, `5:00 at least`; null where no time is known. */
export function expectedWords(expected: ExpectedTime | null): string | null {
  if (expected === null) return null;
  const { lowSeconds: low, highSeconds: high } = expected;
  if (low !== null && high !== null)
    return low === high ? `about ${clockOf(low)}` : `${clockOf(low)} to ${clockOf(high)}`;
  if (low !== null) return `${clockOf(low)} at least`;
  return high === null ? null : `${clockOf(high)} at most`;
}

/** Done minus planned as both are shown, `+1:20`; null where either is not known. */
export function differenceWords(plannedSeconds: number | null, spent: Spent | null): string | null {
  if (plannedSeconds === null || spent === null) return null;
  const apart = Math.floor(spent.seconds) - Math.round(plannedSeconds);
  return apart === 0 ? '0:00' : `${apart < 0 ? '−' : '+'}${minutesSeconds(Math.abs(apart))}`;
}

/** What is expected, beside a clock that runs: `of 1 to 3 minutes`; null where no time is known. */
export function spanRange(expected: ExpectedTime | null): string | null {
  const { lowSeconds: low = null, highSeconds: high = null } = expected ?? {};
  if (low === null || high === null || low === high || low % minute || high % minute || high >= hour) {
    const words = expectedWords(expected);
    return words && `of ${words}`;
  }
  return `of ${low / minute} to ${high / minute} minutes`;
}

/** How long something took and how that is known; what is remembered never looks like what was measured. */
export function spentWords(spent: Spent | null): string {
  if (spent === null) return 'time not known';
  if (spent.how === 'remembered') {
    return `about ${clockOf(spent.seconds)} (${clockOf(spent.low)} to ${clockOf(spent.high)}): remembered, not measured`;
  }
  return clockOf(spent.seconds);
}
