import type { RunState, StageDone } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import type { WorkStage } from '../../../records/work.ts';
import { lineCourse } from '../../../studio/bench/lineCourse.ts';
import { type LineRule, lineRule } from '../../../studio/bench/lineStages.ts';
import { stageCautions } from '../../../studio/bench/stageCautions.ts';
import { etches } from '../../../studio/bench/stagesDone.ts';
import { gumAfterSeconds } from '../../../studio/editions/ledgerState.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { momentText } from '../localMoment.ts';
import { type BenchTap, gummedTap } from './benchTaps.ts';
import { clockOf, expectedWords, spanRange, spokenSpan } from './spanWords.ts';

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
  /** Where the clock stands beside what is expected; null where no time is known or nothing runs. */
  readonly time: {
    /** `of 1 to 3 minutes`; null where only the earliest end is known, as of a rest. */
    readonly range: string | null;
    readonly verdict: 'before' | 'within' | 'over';
    readonly words: string;
  } | null;
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

/** What begins a stage. */
export function beginTap(stage: LineStage): BenchTap {
  return {
    kind: 'stage-started',
    payload: { stage },
    words: say('Begin: {lineRule}', { lineRule: told(lineRule(stage).name) }),
    place: null,
  };
}

/**
 * What ends a stage. A time of waiting that usually follows begins with the same touch, since it asks for nothing: the
 * clock that matters then runs by itself.
 */
export function endTaps(stage: LineStage): readonly BenchTap[] {
  const { name, next, waiting } = lineRule(stage);
  const follows = next !== null && lineRule(next).waiting && !waiting ? next : null;
  const rests = waiting && next !== null && lineRule(next).waiting ? next : null;
  const then = follows ?? rests;
  return [
    {
      kind: 'stage-ended',
      payload: { stage },
      words: say('Done: {name}', { name: told(name) }),
      place: null,
    },
    ...(then === null ? [] : [beginTap(then)]),
  ];
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

/** A rest by what the stone's standing says of it; null where nothing is known. */
function restTime(state: Pick<RunState, 'standing'>): StageView['time'] {
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
function opensAt({ standing }: Pick<RunState, 'standing'>): string | null {
  const { verdict, range, since } = standing;
  if (verdict !== 'too-soon' || range === null || since === null) return null;
  const from = new Date(Date.parse(since) + range.openFrom * 1000).toISOString();
  return say('too soon: it may go on from {moment}', { moment: momentText(from) });
}

/** Washout for a face of 0.2 m², ml: from memory, varies. */
const washoutMl = { low: 10, high: 30, faceMm2: 200_000 } as const;

/** How much washout this stone's face takes, in whole ml; null for any other stage. */
function washoutAmount(stage: LineStage, faceMm2: number): string | null {
  if (stage !== 'washout' && stage !== 'second-washout') return null;
  const of = (ml: number) => Math.max(1, Math.round((ml * faceMm2) / washoutMl.faceMm2));
  return say('{of} to {of2} ml', { of: of(washoutMl.low), of2: of(washoutMl.high) });
}

function withAmount(words: string, stage: LineStage, faceMm2: number): string {
  const amount = washoutAmount(stage, faceMm2);
  return amount === null ? words : `${words}, ${amount}`;
}

/** Its name at first; then from the least time on every minute, with the sign to look for. */
function spokenOf({ name, expected, endSign }: LineRule, headline: string, seconds: number): string {
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

function expectedSentence({ stage, expected, basis }: LineRule, faceMm2: number): string {
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

/** “About” so long is kept up to a fifth more: our rule. */
const aboutShare = 0.2;

function timeOf({ expected }: LineRule, seconds: number): StageView['time'] {
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

function upperFirst(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
