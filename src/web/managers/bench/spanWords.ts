import type { ExpectedTime, Spent } from '../../../records/bench.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { say } from '../../words/say.ts';

const minute = 60;
const hour = 3600;
const day = 24 * hour;

/** A time as a bench clock shows it: `1:05` under an hour, `3 h 20` under two days, else `2 d 4 h`. */
export function clockOf(seconds: number): string {
  if (seconds < hour) return minutesSeconds(Math.floor(seconds));
  if (seconds < 2 * day) {
    const whole = Math.floor(seconds / minute);
    return say('{whole} h {padStart}', {
      whole: Math.floor(whole / 60),
      padStart: String(whole % 60).padStart(2, '0'),
    });
  }
  const hours = Math.floor(seconds / hour);
  return say('{hours} d {hours2} h', { hours: Math.floor(hours / 24), hours2: hours % 24 });
}

/** A time in words that a voice can say: `50 seconds`, `one minute`, `2 minutes`, `3 hours`. */
export function spokenSpan(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < minute) return say('{whole, plural, one {one second} other {{whole} seconds}}', { whole });
  if (whole < hour) {
    const count = Math.floor(whole / minute);
    const rest = whole % minute;
    const words = say('{count, plural, one {one minute} other {{count} minutes}}', { count });
    return rest === 0 ? words : `${words} ${rest}`;
  }
  return whole < 2 * day
    ? say('{count, plural, one {one hour} other {{count} hours}}', { count: Math.floor(whole / hour) })
    : say('{count, plural, one {one day} other {{count} days}}', { count: Math.floor(whole / day) });
}

/** What is expected, in words: `1:00 to 3:00`, `about 0:50`, `5:00 at least`; null where no time is known. */
export function expectedWords(expected: ExpectedTime | null): string | null {
  if (expected === null) return null;
  const { lowSeconds: low, highSeconds: high } = expected;
  if (low !== null && high !== null)
    return low === high
      ? say('about {clockOf}', { clockOf: clockOf(low) })
      : say('{clockOf} to {clockOf2}', { clockOf: clockOf(low), clockOf2: clockOf(high) });
  if (low !== null) return say('{clockOf} at least', { clockOf: clockOf(low) });
  return high === null ? null : say('{clockOf} at most', { clockOf: clockOf(high) });
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
    return words && say('of {words}', { words });
  }
  return say('of {low} to {high} minutes', { low: low / minute, high: high / minute });
}

/** How long something took and how that is known; what is remembered never looks like what was measured. */
export function spentWords(spent: Spent | null): string {
  if (spent === null) return say('time not known');
  if (spent.how === 'remembered') {
    return say('about {clockOf} ({clockOf2} to {clockOf3}): remembered, not measured', {
      clockOf: clockOf(spent.seconds),
      clockOf2: clockOf(spent.low),
      clockOf3: clockOf(spent.high),
    });
  }
  return clockOf(spent.seconds);
}
