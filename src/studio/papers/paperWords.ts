import type { Spent } from '../../records/bench.ts';
import type { ProtocolContact, ProtocolEtch } from '../../records/workProtocol.ts';
import { isoMomentWords } from '../../science/calendar/dateWords.ts';

/** What stands where nothing was recorded. */
export const notRecorded = 'not recorded';

/** A length of time as people say it, whole seconds up to two minutes, then minutes, hours, days. */
export function secondsWords(seconds: number): string {
  if (seconds < 120) return `${Math.round(seconds)} s`;
  if (seconds < 2 * 3600) return `${Math.round(seconds / 6) / 10} min`;
  if (seconds < 48 * 3600) return `${Math.round(seconds / 360) / 10} h`;
  return `${Math.round(seconds / 8640) / 10} days`;
}

/** How long something took, with how that is known. */
export function spanWords(spent: Spent | null): string {
  if (spent === null) return notRecorded;
  const arm = Math.max(spent.high - spent.seconds, spent.seconds - spent.low);
  const words = `${secondsWords(spent.seconds)} ±${secondsWords(arm)}`;
  return spent.how === 'remembered' ? `${words}, remembered` : words;
}

/** How long a place was to lie under its etch. */
export function plannedWords({
  plannedSeconds,
  moveWithinSeconds,
}: Pick<ProtocolEtch, 'plannedSeconds' | 'moveWithinSeconds'>): string {
  if (plannedSeconds === null) return 'none';
  const { low, wanted, high } = plannedSeconds;
  const span = high === null ? `at least ${low} s` : `${low}–${high} s`;
  const wish = wanted === null ? '' : `${wanted} s, `;
  return `${wish}${span}${moveWithinSeconds === null ? '' : `; moved within ${moveWithinSeconds} s`}`;
}

/** How long it did. */
export function contactWords(done: readonly ProtocolContact[]): string {
  if (done.length === 0) return notRecorded;
  return done
    .map(
      ({ spent, longestGapSeconds }) =>
        `${spanWords(spent)}; ${longestGapSeconds === null ? 'moves not recorded' : `longest still ${Math.round(longestGapSeconds)} s`}`,
    )
    .join('. ');
}

/** A moment by the clock it was logged with, to the minute. */
export function timeWords(moment: string | null): string | null {
  return moment === null ? null : isoMomentWords(moment);
}
