import type {
  AuditFinding,
  TestStoneAnswer,
  TestStoneFindings,
  TrialDeviation,
} from '../../../records/testStoneAnswer.ts';
import { auditTrial } from '../audit/auditTrial.ts';
import { anyStands, standingSets } from '../audit/standingSets.ts';
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
import { positionEffects, toneResiduals } from './tonePosition.ts';
import { trialHolds } from './trialHolds.ts';
import { type TrialPatchRow, trialPatches } from './trialPatches.ts';
import { levelNames } from './trialUnits.ts';

/**
 * What one or several test stones answer: what holds, counted by stones and strips; tones against the scatter of the unit that
 * each treatment was given to; what no cause can be assigned to; what to test next.
 * @param stones at least one; several are one trial where they share factors.
 * @param deviations what the run's log says went otherwise than planned; none before the run.
 * @param progress told from 0 to 1.
 */
export function answerTestStone(
  stones: readonly TestStoneFindings[],
  deviations: readonly TrialDeviation[],
  progress: (share: number) => void = () => {},
): TestStoneAnswer {
  const patches = trialPatches(stones);
  const { rows, factors } = patches;
  const audit = auditTrial(patches, deviations);
  const varied = factors.filter(({ name }) => levelNames(rows, name).length > 1);
  const standing = standingSets(rows, varied, audit);
  const { holds, levelHolds, alike } = trialHolds(rows, factors);
  const controlOf = (factor: string) => controlLevel(rows, factor);
  progress(0.3);
  const tone = toneRows(rows);
  const toned = varied.filter(({ name }) => levelNames(tone.rows, name).length > 1);
  const beside = toned.filter(({ name }) => outsideModel(audit, name) && !anyStands(standing, name));
  const inModel = toned.filter((factor) => !beside.includes(factor));
  const { tones, tests, contrasts, components, warnings } = toneAnswer(
    tone,
    inModel,
    beside,
    standingSets(tone.rows, toned, audit),
    controlOf,
  );
  progress(0.6);
  const odds = holdOdds(
    rows,
    varied.filter(({ name }) => anyStands(standing, name)),
    standing,
    alike.value,
    controlOf,
  );
  progress(0.8);
  const position = positionEffects(tone, toned);
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
    residuals: toneResiduals(tone, toned),
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

/** Treatments that strips, stones or places tell as well stay out of the model, which keeps those for scatter. */
function outsideModel(audit: readonly AuditFinding[], factor: string): boolean {
  return audit.some(
    ({ code, weight, factors }) =>
      weight === 'no-cause' &&
      factors.includes(factor) &&
      (code === 'no-replicate' || code === 'block-apart' || code === 'place'),
  );
}

function filledNote(rows: readonly TrialPatchRow[], told: boolean): string[] {
  const filled = rows.filter(({ hold }) => hold === 'filled').length;
  return told && filled > 0
    ? [
        `${filled} filled ${filled === 1 ? 'patch is' : 'patches are'} left out of the odds of a better hold: they took too much ink, not too little.`,
      ]
    : [];
}
