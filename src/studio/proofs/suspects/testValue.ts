import type { Cause, TestOutcome } from '../../../records/suspects.ts';
import { type SeparatingTest, separatingTests } from './separatingTests.ts';
import type { Weighed } from './weighCauses.ts';

const chanceOfYes = (test: SeparatingTest, suspect: string) =>
  test.chance[suspect as Cause] ?? test.otherwise;

/** Suspects as shares of one whole, by their odds: who would be it, were it but one. */
function shares(weighed: readonly Weighed[]): readonly number[] {
  const odds = weighed.map(({ chance }) => chance / (1 - Math.min(chance, 0.999)));
  const total = odds.reduce((sum, value) => sum + value, 0);
  return odds.map((value) => value / total);
}

const entropy = (p: number) => (p <= 0 || p >= 1 ? 0 : -p * Math.log2(p) - (1 - p) * Math.log2(1 - p));

/** Bits that a test is expected to tell about which suspect it is: mutual information over the present judgement. */
export function expectedBits(test: SeparatingTest, weighed: readonly Weighed[]): number {
  const share = shares(weighed);
  const yes = weighed.reduce((sum, { suspect }, i) => sum + share[i]! * chanceOfYes(test, suspect), 0);
  const left = weighed.reduce(
    (sum, { suspect }, i) => sum + share[i]! * entropy(chanceOfYes(test, suspect)),
    0,
  );
  return Math.max(0, entropy(yes) - left);
}

/**
 * Log odds that an outcome adds to a cause: its chance under the cause against that under all the others, as likely as they
 * are now.
 */
export function outcomeWeight(
  { test: id, outcome }: TestOutcome,
  cause: Cause,
  weighed: readonly Weighed[],
): number {
  const test = separatingTests.find((one) => one.id === id);
  if (!test) return 0;
  const chance = (suspect: string) =>
    outcome === 'yes' ? chanceOfYes(test, suspect) : 1 - chanceOfYes(test, suspect);
  const others = weighed.filter(({ suspect }) => suspect !== cause);
  const share = shares(others);
  const under = others.reduce((sum, { suspect }, i) => sum + share[i]! * chance(suspect), 0);
  return test.chance[cause] === undefined && Math.abs(chance(cause) - under) < 0.05
    ? 0
    : Math.log(Math.max(0.01, chance(cause)) / Math.max(0.01, under));
}
