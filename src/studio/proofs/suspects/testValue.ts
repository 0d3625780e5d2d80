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

/** Bits that a test is expected to tell about which of two suspects it is, were it one of them, either as likely. */
export function bitsBetween(test: SeparatingTest, [one, other]: readonly [Cause, Cause]): number {
  const [p, q] = [chanceOfYes(test, one), chanceOfYes(test, other)];
  return entropy((p + q) / 2) - (entropy(p) + entropy(q)) / 2;
}

/**
 * Log odds that an outcome adds to a cause, several causes being able to hold at once: yes comes about by any that holds and would
 * bring it (noisy or: Pearl 1988, from memory), or of itself where none of the test's causes holds.
 */
export function outcomeWeight(
  { test: id, outcome }: TestOutcome,
  cause: Cause,
  weighed: readonly Weighed[],
): number {
  const test = separatingTests.find((one) => one.id === id);
  const own = test?.chance[cause];
  if (!test || own === undefined) return 0;
  const others = weighed.filter(({ suspect }) => suspect !== cause && suspect in test.chance);
  const noOther = others.reduce(
    (left, { suspect, chance }) => left * (1 - chance * chanceOfYes(test, suspect)),
    1,
  );
  const none = others.reduce((left, { chance }) => left * (1 - chance), 1);
  const yes = { with: 1 - noOther * (1 - own), without: 1 - noOther * (1 - test.otherwise * none) };
  const [held, not] = outcome === 'yes' ? [yes.with, yes.without] : [1 - yes.with, 1 - yes.without];
  return Math.log(Math.max(0.01, held) / Math.max(0.01, not));
}
