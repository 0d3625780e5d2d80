import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { RunState, StageDone } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import type { WorkStage } from '../../../records/work.ts';
import { lineCourse } from '../../../studio/bench/lineCourse.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { stageCautions } from '../../../studio/bench/stageCautions.ts';
import { etches } from '../../../studio/bench/stagesDone.ts';
import { gumAfterSeconds } from '../../../studio/editions/ledgerState.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { type BenchTap, gummedTap } from './benchTaps.ts';
import { beginTap, endTaps } from './stageTaps.ts';
import { opensAt, restTime, type StageTime, timeOf } from './stageTime.ts';
import { expectedSentence, spokenOf, withAmount } from './stageWords.ts';

/** All that the bench says of a stage of the line at one moment. */
export interface StageView {
  /** Under way; to be begun; or nothing left in the line. */
  readonly phase: 'open' | 'next' | 'end';
  /** At the end `regrain` where the work was grained away. */
  readonly stage: LineStage | null;
  /** How long it has been under way; null before it. */
  readonly seconds: number | null;
  readonly headline: string;
  readonly endSign: string | null;
  /** What is expected and by what right, in plain words. */
  readonly expected: string;
  /** null where no time is known or nothing runs. */
  readonly time: StageTime | null;
  /** Why it is too soon for what is offered first, which is then asked once; null where it isn't. */
  readonly early: string | null;
  readonly cautions: readonly string[];
  /** What the space bar, the pedal and the large target log, one after the other; empty where nothing is left. */
  readonly first: readonly BenchTap[];
  /**
   * What logs a stone gummed that is inked and bare; null where it asks for no gum. It comes `first` where the stone
   * stands between two stages as long as at a press that stands, unless an etch covers it next, and where it was left in
   * the middle of a stage.
   */
  readonly gum: { readonly tap: BenchTap; readonly first: boolean } | null;
  /** What the voice says at this moment; it is said anew whenever it changes. */
  readonly spoken: string;
}

/**
 * What the bench shows of a run between and in its stages, from its log and the clock alone.
 * @param faceMm2 the stone's face, mm²: what a washout takes goes by it
 * @param quickPlanned whether the second etch that was planned last is a quick one: it is then what comes next
 */
export function stageView(
  state: Pick<RunState, 'stages' | 'at' | 'standing'>,
  workStage: WorkStage,
  faceMm2: number,
  quickPlanned = false,
): StageView {
  const { open, next: usual, last } = lineCourse(state.stages, workStage);
  if (open) return openView(open, state, faceMm2);
  const next = usual === 'second-etch' && quickPlanned ? 'second-etch-quick' : usual;
  if (next === null) {
    const gone = (last?.stage ?? (workStage === 'regrained' ? 'regrain' : null)) === 'regrain';
    if (gone) return grainedAway;
    return {
      phase: 'end',
      stage: null,
      seconds: null,
      headline: say('Nothing is left in the line'),
      endSign: null,
      expected: say('Another stage can be begun all the same.'),
      time: null,
      early: null,
      cautions: [],
      first: [],
      gum: gumOf(state, null),
      spoken: say('Nothing is left in the line'),
    };
  }
  const rule = lineRule(next);
  const gum = gumOf(state, next);
  const headline = withAmount(say('Next: {rule}', { rule: told(rule.name) }), next, faceMm2);
  return {
    phase: 'next',
    stage: next,
    seconds: null,
    headline,
    endSign: told(rule.endSign),
    expected: expectedSentence(rule, faceMm2),
    time: null,
    early: rule.waiting ? null : opensAt(state),
    cautions: stageCautions(next),
    first: [beginTap(next)],
    gum,
    spoken: gum?.first ? gumWanted : headline,
  };
}

/** The work is over, its stone free. */
const grainedAway: StageView = {
  phase: 'end',
  stage: 'regrain',
  seconds: null,
  headline: say('Grained away'),
  endSign: null,
  expected: say(
    'What was logged, photographed and printed of this work is kept. The stone is free for another; how flat it is now is not known until it is measured again.',
  ),
  time: null,
  early: null,
  cautions: [],
  first: [],
  gum: null,
  spoken: say('Grained away'),
};

/** What a stone that stands inked and bare asks for. */
export const gumWanted = say('This stone wants gum now: gum it, buff it tight.');

function gumOf(
  { standing, at }: Pick<RunState, 'standing' | 'at'>,
  next: LineStage | null,
): StageView['gum'] {
  if (!standing.gumNow) return null;
  const { since } = standing;
  const stood = since === null ? null : (Date.parse(at) - Date.parse(since)) / 1000;
  const etchedNext = next !== null && etches.includes(next);
  return { tap: gummedTap, first: !etchedNext && (stood === null || stood > gumAfterSeconds) };
}

/** Nothing was logged for so long in a stage that inks or prints: nobody works there any more, seconds; our rule. */
const leftAfterSeconds = 2 * 3600;

/** Whether hands left a stone in the middle of a stage, by the last sign of work on it. */
function leftStanding({ standing: { bestBy }, at }: Pick<RunState, 'standing' | 'at'>): boolean {
  return bestBy !== null && (Date.parse(at) - Date.parse(bestBy)) / 1000 + gumAfterSeconds > leftAfterSeconds;
}

function openView(open: StageDone, state: Pick<RunState, 'at' | 'standing'>, faceMm2: number): StageView {
  const seconds = Math.max(0, (Date.parse(state.at) - Date.parse(open.startedAt!)) / 1000);
  const rule = lineRule(open.stage);
  const headline = withAmount(upperFirst(told(rule.name)), open.stage, faceMm2);
  const rest = rule.waiting ? restTime(state) : null;
  const time = timeOf(rule, seconds) ?? rest;
  const { next, waiting } = rule;
  // waiting asks for nothing: the way out of it is to begin what follows
  const leave = waiting && next !== null && !lineRule(next).waiting ? [beginTap(next)] : endTaps(open.stage);
  const early = time?.verdict === 'before' ? time.words : null;
  const gum = state.standing.gumNow ? { tap: gummedTap, first: leftStanding(state) } : null;
  return {
    phase: 'open',
    stage: open.stage,
    seconds,
    headline,
    endSign: told(rule.endSign),
    expected: expectedSentence(rule, faceMm2),
    time,
    early,
    cautions: stageCautions(open.stage),
    first: leave,
    gum,
    spoken: gum?.first ? gumWanted : spokenOf(rule, headline, seconds),
  };
}
