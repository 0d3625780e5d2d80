import {
  type Cause,
  type DoneTest,
  type FeatureName,
  featureNames,
  type JudgedSuspect,
  type OfferedTest,
  type Reason,
  type SuspectsAnswer,
  type SuspectsQuestion,
  type WeightWord,
} from '../../../records/suspects.ts';
import { alikeSuspects, alikeWords } from './alikeSuspects.ts';
import { causeTable, startingLogOdds } from './causeTable.ts';
import { presences } from './featurePresence.ts';
import { featureTable } from './featureTable.ts';
import { judgeSuspects } from './judgeSuspects.ts';
import { type SeparatingTest, separatingTests } from './separatingTests.ts';
import { expectedBits } from './testValue.ts';
import type { Weighed } from './weighCauses.ts';

/** A reason that weighs less is not worth a line. */
const leastWeight = 0.4;
/** A test that is expected to tell less is not offered. */
const leastBits = 0.02;

/** Names suspects with what speaks for and against each, and the tests that would tell them apart: never a verdict. */
export function answerSuspects(question: SuspectsQuestion): SuspectsAnswer {
  const weighed = judgeSuspects(question);
  const presence = presences(question.features);
  const suspects = weighed.map((one) => judged(one, question)).toSorted((a, b) => rank(b) - rank(a));
  const done = question.outcomes.map(({ test }) => test);
  const named = weighed
    .filter((one) => one.suspect !== 'something-else' && one.logOdds - one.start >= namedFrom)
    .toSorted((a, b) => b.logOdds - a.logOdds);
  const alike = alikeSuspects(named, done);
  const firstTest = ({ test }: OfferedTest) => (test === alike?.test?.id ? 1 : 0);
  const tests = separatingTests
    .filter(({ id }) => !done.includes(id))
    .map((test): OfferedTest => {
      const bits = expectedBits(test, weighed);
      return {
        ...asked(test),
        bits,
        bitsPerMinute: bits / test.minutes,
        separates: Object.keys(test.chance) as Cause[],
      };
    })
    .filter(({ bits }) => bits >= leastBits)
    .toSorted((a, b) => firstTest(b) - firstTest(a) || b.bitsPerMinute - a.bitsPerMinute);
  return {
    basis: 'common practice',
    suspects,
    tests,
    done: doneTests(question),
    photograph: {
      question:
        'Is it the photograph? Set the same sheet up again and read it twice before blaming stone or press.',
      doubt:
        weighed.find(({ suspect }) => suspect === 'photograph')!.weights.length > 0
          ? suspects.find(({ suspect }) => suspect === 'photograph')!.evidence
          : 'none',
    },
    seen: [...presence]
      .filter(([, share]) => share > 0.5)
      .map(([feature]) => ({
        feature,
        words: sentence(feature, question, true),
        see: featureTable[feature].see,
      })),
    unknown: featureNames.filter((name) => !presence.has(name)),
    warnings: [...(alike ? [alikeWords(alike)] : []), ...warningsOf(question)],
    roomCases: question.room?.closed ?? 0,
    found: question.found ?? null,
  };
}

function asked({ id, words, minutes, yes, no }: SeparatingTest) {
  const outcomes = [
    { outcome: 'yes', words: yes },
    { outcome: 'no', words: no },
  ];
  return { test: id, words, minutes, outcomes };
}

function doneTests({ outcomes }: SuspectsQuestion): DoneTest[] {
  return outcomes
    .flatMap(({ test, outcome }) => {
      const known = separatingTests.find(({ id }) => id === test);
      return known ? [{ ...asked(known), outcome }] : [];
    })
    .toReversed();
}

function rank({ chance, weight }: JudgedSuspect): number {
  return (chance?.value ?? 0) + 1e-6 * weight;
}

function judged(one: Weighed, question: SuspectsQuestion): JudgedSuspect {
  const room = one.suspect === 'something-else' ? 0 : one.start - startingLogOdds;
  const reasons: Reason[] = one.weights.map(({ feature, presence, weight }) => ({
    what: feature,
    words: sentence(feature, question, presence > 0.5),
    see: featureTable[feature].see,
    weight: rounded(weight),
  }));
  if (one.fromTests !== 0)
    reasons.push({ what: 'test', words: 'the outcomes of tests', see: null, weight: rounded(one.fromTests) });
  if (Math.abs(room) >= leastWeight)
    reasons.push({
      what: 'room',
      words: `what this room found in ${question.room!.closed} cases`,
      see: null,
      weight: rounded(room),
    });
  const weight = one.suspect === 'something-else' ? one.logOdds - one.start : one.logOdds - one.start + room;
  const spoken = one.weights.length > 0 || one.fromTests !== 0;
  const told = reasons.filter((reason) => Math.abs(reason.weight) >= leastWeight);
  return {
    suspect: one.suspect,
    name: one.suspect === 'something-else' ? 'something else' : causeTable[one.suspect].name,
    evidence: wordOf(weight),
    weight: rounded(weight),
    chance: spoken
      ? {
          value: Math.round(one.chance * 100) / 100,
          basis: question.room?.closed ? 'simulation, this room’s counts as the start' : 'simulation',
        }
      : null,
    supporting: told.filter((reason) => reason.weight > 0).toSorted((a, b) => b.weight - a.weight),
    opposing: told.filter((reason) => reason.weight < 0).toSorted((a, b) => a.weight - b.weight),
  };
}

/** Log odds from which on a suspect is named: evidence of about 2 to 1, called some. */
export const namedFrom = 0.7;

/** In words: strong from about 20 to 1, some from about 2 to 1. */
export function wordOf(weight: number): WeightWord {
  if (weight >= 3) return 'strong';
  if (weight >= namedFrom) return 'some';
  return weight > -0.7 ? 'none' : 'against';
}

function sentence(feature: FeatureName, { features }: SuspectsQuestion, seen: boolean): string {
  const note = seen ? features[feature]?.note : null;
  return `${featureTable[feature][seen ? 'seen' : 'absent']}${note ? ` (${note})` : ''}`;
}

function warningsOf({ features, outcomes }: SuspectsQuestion): string[] {
  const unknownTests = outcomes.filter(({ test }) => !separatingTests.some(({ id }) => id === test));
  const any = Object.values(features).some((reading) => reading != null);
  return [
    ...(any ? [] : ['Nothing was read yet: no suspect can be told from another.']),
    ...unknownTests.map(({ test }) => `There is no test called ${test}: its outcome was passed over.`),
    'Weights are common practice; chances hold for simulated faults, not for this room.',
  ];
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
