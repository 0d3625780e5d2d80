import type { Cause, FeatureName } from '../../../records/suspects.ts';
import { causeTable } from './causeTable.ts';
import { featureTable } from './featureTable.ts';
import { type SeparatingTest, separatingTests } from './separatingTests.ts';
import { bitsBetween } from './testValue.ts';
import type { Weighed } from './weighCauses.ts';

/** Two suspects for which the same sign speaks first, neither much likelier than the other. */
export interface AlikeSuspects {
  readonly suspects: readonly [Cause, Cause];
  readonly sign: FeatureName;
  /** The test that tells most between the two for each minute; null where none that is left tells them apart. */
  readonly test: SeparatingTest | null;
}

/** Log odds by which two suspects differ that are told apart: about 3 to 1. Our rule. */
const apart = 1.1;
/** A test tells two suspects apart that settles at least so many bits between them. Our rule. */
const leastBits = 0.1;

/**
 * The likeliest two suspects that leave one sign and are not told apart by any other; null where there are none.
 * @param named causes with evidence for them, likeliest first.
 * @param done tests with an outcome.
 */
export function alikeSuspects(named: readonly Weighed[], done: readonly string[]): AlikeSuspects | null {
  for (const [i, one] of named.entries())
    for (const other of named.slice(i + 1)) {
      const sign = strongestSign(one);
      if (sign === null || sign !== strongestSign(other)) continue;
      if (Math.abs(one.logOdds - other.logOdds) > apart) continue;
      const pair = [one.suspect as Cause, other.suspect as Cause] as const;
      return { suspects: pair, sign, test: testBetween(pair, done) };
    }
  return null;
}

/** What a person is told of two alike suspects. */
export function alikeWords({ suspects, sign, test }: AlikeSuspects): string {
  const [one, other] = suspects.map((cause) => causeTable[cause].name);
  const told = `Two suspects leave one sign, ${featureTable[sign].seen}: “${one}” and “${other}”.`;
  return test
    ? `${told} This tells them apart: ${test.words}.`
    : `${told} No test that is left tells them apart.`;
}

function strongestSign({ weights }: Weighed): FeatureName | null {
  const most = weights.reduce((best, one) => (one.weight > best.weight ? one : best), weights[0]!);
  return most && most.weight > 0 ? most.feature : null;
}

function testBetween(pair: readonly [Cause, Cause], done: readonly string[]): SeparatingTest | null {
  const worth = (test: SeparatingTest) => bitsBetween(test, pair) / test.minutes;
  return (
    separatingTests
      .filter((test) => !done.includes(test.id) && bitsBetween(test, pair) >= leastBits)
      .toSorted((a, b) => worth(b) - worth(a))[0] ?? null
  );
}
