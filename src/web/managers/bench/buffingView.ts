import type { LineStage } from '../../../records/run.ts';
import { buffingRounds } from '../../../studio/etch/endSigns.ts';
import { say } from '../../words/say.ts';
import { buffingTaps } from './benchTaps.ts';
import type { BenchView } from './benchView.ts';
import { signWords } from './stepWords.ts';

/** What the bench shows once everything is lifted: the rounds of buffing, then the end of the etch. */
export function buffingView({
  rounds,
  stage,
  order,
  places,
  facts,
}: Pick<BenchView, 'places' | 'facts'> & {
  readonly rounds: number;
  readonly stage: LineStage;
  /** Letters in the order of buffing. */
  readonly order: string;
}): BenchView {
  const round = rounds + 1;
  const enough = round > buffingRounds;
  return {
    phase: 'buffing',
    letter: enough ? null : `${round}`,
    seconds: null,
    counting: 'left',
    words: enough
      ? say('Buffed tight? Then the etch is done')
      : say('Buff, round {round} of {buffingRounds}, a fresh cloth', { round, buffingRounds }),
    stayOff: null,
    endSign: signWords('buff'),
    next: enough ? null : say('In the order {order}', { order }),
    nextSeconds: null,
    other: null,
    places,
    taps: buffingTaps(rounds, stage),
    facts,
  };
}
