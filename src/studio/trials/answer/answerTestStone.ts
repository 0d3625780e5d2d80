import type { TestFactor } from '../../../records/testStone.ts';
import type { TestStoneAnswer, TestStoneFindings, TrialDeviation } from '../../../records/testStoneAnswer.ts';
import { rankOf } from '../../../science/statistics/mixed/rankOf.ts';
import { auditTrial, withoutCause } from '../audit/auditTrial.ts';
import {
  causeSentences,
  factorSentences,
  holdSentence,
  positionSentences,
  verdictSentence,
} from './answerWords.ts';
import { controlLevel } from './controlLevel.ts';
import { holdOdds } from './holdOdds.ts';
import { openQuestions } from './openQuestions.ts';
import { toneAnswer, toneRows } from './toneAnswer.ts';
import { toneModel } from './toneModel.ts';
import { positionEffects, toneResiduals } from './tonePosition.ts';
import { trialHolds } from './trialHolds.ts';
import { type TrialPatchRow, trialPatches } from './trialPatches.ts';
import { levelNames } from './trialUnits.ts';

/**
 * What one or several test stones answer: what holds, counted by stones and strips; tones against the scatter of the unit that
 * each treatment was given to; what no cause can be assigned to; what to test next.
 * @param stones at least one; several are one trial where they share factors.
 * @param deviations what the run's log says went otherwise than planned; none before the run.
 */
export function answerTestStone(
  stones: readonly TestStoneFindings[],
  deviations: readonly TrialDeviation[],
): TestStoneAnswer {
  const patches = trialPatches(stones);
  const { rows, factors } = patches;
  const audit = auditTrial(patches, deviations);
  const blocked = withoutCause(audit);
  const { holds, levelHolds, alike } = trialHolds(rows, factors);
  const controlOf = (factor: string) => controlLevel(rows, factor);
  const tone = toneRows(rows);
  const { tones, tests, contrasts, components, warnings } = toneAnswer(tone, factors, blocked, controlOf);
  const free = factors.filter(({ name }) => !blocked.has(name));
  const odds = holdOdds(rows, free, alike.value, controlOf);
  const apart = independentFactors(tone.rows, factors);
  const position = positionEffects(tone, apart);
  return {
    schema: 'stonetone/test-stone-answer/1',
    stones: [...new Set(stones.map(({ stone }) => stone))],
    factors,
    holds,
    levelHolds,
    alike,
    toneOf: tone.of,
    tones,
    tests,
    contrasts,
    odds,
    components,
    audit,
    position,
    residuals: toneResiduals(tone, apart),
    words: [
      ...causeSentences(audit),
      ...holds.filter(({ verdict }) => verdict !== 'open').map(holdSentence),
      ...verdictSentence(holds, stones.length),
      ...factorSentences(
        tests,
        contrasts,
        odds,
        tone.of === 'change' ? 'coverage printed less drawn' : 'coverage printed',
      ),
      ...positionSentences(position),
    ],
    openQuestions: openQuestions(holds, audit, tests, position),
    warnings: [...patches.leftOut, ...warnings, ...filledNote(rows, odds.length > 0)],
  };
}

/** Factors that a least-squares fit can tell apart, in their order. */
function independentFactors(rows: readonly TrialPatchRow[], factors: readonly TestFactor[]): TestFactor[] {
  const kept: TestFactor[] = [];
  for (const factor of rows.length === 0 ? [] : factors) {
    const tried = [...kept, factor];
    const needed = tried.reduce((sum, { name }) => sum + levelNames(rows, name).length - 1, 1);
    if (levelNames(rows, factor.name).length > 1 && rankOf(toneModel(rows, tried).design) >= needed)
      kept.push(factor);
  }
  return kept;
}

function filledNote(rows: readonly TrialPatchRow[], told: boolean): string[] {
  const filled = rows.filter(({ hold }) => hold === 'filled').length;
  return told && filled > 0
    ? [
        `${filled} filled ${filled === 1 ? 'patch is' : 'patches are'} left out of the odds of a better hold: they took too much ink, not too little.`,
      ]
    : [];
}
