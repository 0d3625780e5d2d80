import type { RunState } from '../../../records/bench.ts';
import type { LineRule } from '../../../studio/bench/lineStages.ts';
import { say } from '../../words/say.ts';
import { momentText } from '../localMoment.ts';
import { clockOf, spanRange } from './spanWords.ts';

/** Where the clock stands beside what is expected. */
export interface StageTime {
  /** `of 1 to 3 minutes`; null where only the earliest end is known, as of a rest. */
  readonly range: string | null;
  readonly verdict: 'before' | 'within' | 'over';
  readonly words: string;
}

/** A rest by what the stone's standing says of it; null where nothing is known. */
export function restTime(state: Pick<RunState, 'standing'>): StageTime | null {
  const early = opensAt(state);
  if (early !== null) return { range: null, verdict: 'before', words: early };
  const { verdict, bestBy } = state.standing;
  if (verdict === 'past-best') return { range: null, verdict: 'over', words: say('past its best time') };
  if (verdict !== 'best' && verdict !== 'open') return null;
  const until =
    verdict === 'best' && bestBy !== null
      ? say('best until {moment}', { moment: momentText(bestBy) })
      : say('may go on');
  return { range: null, verdict: 'within', words: until };
}

/** From when the stone may go on, where that is still to come. */
export function opensAt({ standing }: Pick<RunState, 'standing'>): string | null {
  const { verdict, range, since } = standing;
  if (verdict !== 'too-soon' || range === null || since === null) return null;
  const from = new Date(Date.parse(since) + range.openFrom * 1000).toISOString();
  return say('too soon: it may go on from {moment}', { moment: momentText(from) });
}

/** “About” so long is kept up to a fifth more: our rule. */
const aboutShare = 0.2;

/** The clock of a stage beside what is expected of it; null where no time is known. */
export function timeOf({ expected }: LineRule, seconds: number): StageTime | null {
  const low = expected?.lowSeconds ?? expected?.highSeconds ?? null;
  const high = expected?.highSeconds ?? null;
  const range = spanRange(expected);
  if (low === null || range === null) return null;
  const loose = low === high ? aboutShare * low : 2;
  const verdict = seconds < low ? 'before' : high === null || seconds <= high + loose ? 'within' : 'over';
  const words = {
    before: say('too soon: {clockOf} to go at least', { clockOf: clockOf(Math.ceil(low - seconds)) }),
    within: high === null ? say('long enough') : say('in its time: look for the sign'),
    over: say('{clockOf} over what is usual', { clockOf: clockOf(seconds - (high ?? 0)) }),
  }[verdict];
  return { range, verdict, words };
}
