import { type ComparedPull, comparedFeatures } from '../../imaging/evidence/comparedFeatures.ts';
import type { Features, SuspectsAnswer, SuspectsQuestion } from '../../records/suspects.ts';
import { answerSuspects } from '../../studio/proofs/suspects/answerSuspects.ts';

/** What is asked beside the pulls themselves. */
export interface AboutPulls extends Pick<SuspectsQuestion, 'outcomes' | 'room' | 'found'> {
  readonly log: Features;
}

/**
 * Suspects behind what pulls of one stone show.
 * @param pulls earliest first, at least one; the picture is that of the last but one, where there are two or more.
 */
export function answerComparisons(pulls: readonly ComparedPull[], about: AboutPulls): SuspectsAnswer {
  const { features, missing } = comparedFeatures(pulls);
  const answer = answerSuspects({
    features: { ...features, ...about.log },
    outcomes: about.outcomes,
    room: about.room,
    found: about.found ?? null,
  });
  return { ...answer, warnings: [...missing, ...answer.warnings] };
}
