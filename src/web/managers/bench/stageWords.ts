import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { LineStage } from '../../../records/run.ts';
import type { LineRule } from '../../../studio/bench/lineStages.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { expectedWords, spokenSpan } from './spanWords.ts';

const basisWords = {
  published: say('published'),
  'common practice': say('common practice'),
  memory: say('from memory, varies'),
  'this room': say('this room’s record'),
  typed: say('typed'),
  measured: say('measured'),
} as const;

/** Minutes are called out only of stages that last so long at most, seconds. */
const calledUpTo = 20 * 60;

/** Washout for a face of 0.2 m², ml: from memory, varies. */
const washoutMl = { low: 10, high: 30, faceMm2: 200_000 } as const;

/** How much washout this stone's face takes, in whole ml; null for any other stage. */
function washoutAmount(stage: LineStage, faceMm2: number): string | null {
  if (stage !== 'washout' && stage !== 'second-washout') return null;
  const of = (ml: number) => Math.max(1, Math.round((ml * faceMm2) / washoutMl.faceMm2));
  return say('{of} to {of2} ml', { of: of(washoutMl.low), of2: of(washoutMl.high) });
}

/** With how much washout it takes, where it is one. @param faceMm2 the stone's face, mm² */
export function withAmount(words: string, stage: LineStage, faceMm2: number): string {
  const amount = washoutAmount(stage, faceMm2);
  return amount === null ? words : `${words}, ${amount}`;
}

/** Its name at first; then from the least time on every minute, with the sign to look for. */
export function spokenOf({ name, expected, endSign }: LineRule, headline: string, seconds: number): string {
  const low = expected?.lowSeconds ?? null;
  const most = expected?.highSeconds ?? low;
  if (low === null || most === null || most > calledUpTo || seconds < low) return headline;
  const reached = seconds < low + 60 ? low : Math.max(low, Math.floor(seconds / 60) * 60);
  return say('{upperFirst}, {spokenSpan}. Look: {endSign}?', {
    upperFirst: upperFirst(told(name)),
    spokenSpan: spokenSpan(reached),
    endSign: told(endSign),
  });
}

/** How long a stage usually takes and by what right, in a sentence. @param faceMm2 the stone's face, mm² */
export function expectedSentence({ stage, expected, basis }: LineRule, faceMm2: number): string {
  const time = expectedWords(expected);
  if (expected === null)
    return say('No time is known that it should take; the sign decides ({basisWords}).', {
      basisWords: basisWords[basis],
    });
  const words = upperFirst(
    [time, expected.note, basisWords[expected.basis]].filter((each) => each).join(', '),
  );
  if (washoutAmount(stage, faceMm2) === null) return words;
  const face = (faceMm2 / 1e6).toFixed(2);
  return say(
    '{words}. 10–30 ml per 0.2 m², this stone {face} m², from memory, varies; low-odour: half of it for twice the time, common practice',
    { words, face },
  );
}
