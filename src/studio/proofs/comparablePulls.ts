import type { PullReading } from '../../records/proofSeries.ts';

/** From a day on a print counts as dry, whatever its hours. Our rule; the protocol reads prints at 24 to 48 hours. */
const dryMinutes = 1440;
/** Ages that differ by no more than this share of the older count as the same. Our rule. */
const ageSlack = 0.25;

/** Pulls that may be compared with the latest, in order of their numbers, and the rest with what sets them apart. */
export interface ComparablePulls {
  readonly comparable: readonly PullReading[];
  readonly otherPaper: readonly PullReading[];
  readonly otherAge: readonly PullReading[];
}

/**
 * Parts the pulls by whether they may be compared with the latest: same paper, same age. Nothing is ever pooled across
 * either. Papers are the same whose names differ by no more than capitals and spaces; pulls without an age count as equal.
 * @param pulls in any order.
 */
export function comparablePulls(pulls: readonly PullReading[]): ComparablePulls {
  const ordered = [...pulls].sort((one, other) => one.n - other.n);
  const latest = ordered.at(-1);
  if (!latest) return { comparable: [], otherPaper: [], otherAge: [] };
  const paper = plain(latest.paper);
  const onPaper = ordered.filter((pull) => plain(pull.paper) === paper);
  return {
    comparable: onPaper.filter((pull) => sameAge(pull.age, latest.age)),
    otherPaper: ordered.filter((pull) => plain(pull.paper) !== paper),
    otherAge: onPaper.filter((pull) => !sameAge(pull.age, latest.age)),
  };
}

function plain(words: string): string {
  return words.trim().toLowerCase().replace(/\s+/g, ' ');
}

/** Whether two ages count as the same: within a quarter of the older, or both a day old and more; words as they are. */
export function sameAge(one: PullReading['age'], other: PullReading['age']): boolean {
  if (typeof one === 'number' && typeof other === 'number') {
    const younger = Math.min(one, other);
    const older = Math.max(one, other);
    return younger >= dryMinutes || older - younger <= ageSlack * older;
  }
  if (typeof one === 'string' && typeof other === 'string') return plain(one) === plain(other);
  return one === other;
}
