import type { RunState, StageDone } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import type { WorkStage } from '../../../records/work.ts';
import { lineCourse } from '../../../studio/bench/lineCourse.ts';
import { type LineRule, lineRule } from '../../../studio/bench/lineStages.ts';
import { stageCautions } from '../../../studio/bench/stageCautions.ts';
import type { BenchTap } from './benchTaps.ts';
import { clockOf, expectedWords, spokenSpan } from './spanWords.ts';

/** All that the bench says of a stage of the line at one moment. */
export interface StageView {
  /** Under way; to be begun; or nothing left in the line. */
  readonly phase: 'open' | 'next' | 'end';
  readonly stage: LineStage | null;
  /** How long it has been under way; null before it. */
  readonly seconds: number | null;
  readonly headline: string;
  readonly endSign: string | null;
  /** What is expected and by what right, in plain words. */
  readonly expected: string;
  /** Where the clock stands against the range; null where no range is known or nothing runs. */
  readonly gauge: {
    /** Shares of the strip, 0..1. */
    readonly from: number;
    readonly to: number;
    readonly now: number;
    readonly verdict: 'before' | 'within' | 'over';
    readonly words: string;
  } | null;
  readonly cautions: readonly string[];
  /** What the space bar, the pedal and the large target log, one after the other; empty where nothing is left. */
  readonly first: readonly BenchTap[];
  /** What the voice says at this moment; it is said anew whenever it changes. */
  readonly spoken: string;
}

const basisWords = {
  published: 'published',
  'common practice': 'common practice',
  memory: 'from memory, varies',
  'this room': 'this room’s record',
  typed: 'typed',
  measured: 'measured',
} as const;

/** Minutes are called out only of stages that last so long at most, seconds. */
const calledUpTo = 20 * 60;

/** What the bench shows of a run between and in its stages, from its log and the clock alone. */
export function stageView(state: Pick<RunState, 'stages' | 'at'>, workStage: WorkStage): StageView {
  const { open, next } = lineCourse(state.stages, workStage);
  if (open) return openView(open, (Date.parse(state.at) - Date.parse(open.startedAt!)) / 1000);
  if (next === null) {
    return {
      phase: 'end',
      stage: null,
      seconds: null,
      headline: 'Nothing is left in the line',
      endSign: null,
      expected: 'Another stage can be begun all the same.',
      gauge: null,
      cautions: [],
      first: [],
      spoken: 'Nothing is left in the line',
    };
  }
  const rule = lineRule(next);
  return {
    phase: 'next',
    stage: next,
    seconds: null,
    headline: `Next: ${rule.name}`,
    endSign: rule.endSign,
    expected: expectedSentence(rule),
    gauge: null,
    cautions: stageCautions(next),
    first: [beginTap(next)],
    spoken: `Next: ${rule.name}`,
  };
}

/** What begins a stage. */
export function beginTap(stage: LineStage): BenchTap {
  return { kind: 'stage-started', payload: { stage }, words: `Begin: ${lineRule(stage).name}`, place: null };
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
    { kind: 'stage-ended', payload: { stage }, words: `Done: ${name}`, place: null },
    ...(then === null ? [] : [beginTap(then)]),
  ];
}

function openView(open: StageDone, seconds: number): StageView {
  const rule = lineRule(open.stage);
  const headline = upperFirst(rule.name);
  const base = {
    phase: 'open',
    stage: open.stage,
    seconds: Math.max(0, seconds),
    headline,
    endSign: rule.endSign,
    expected: expectedSentence(rule),
    gauge: gaugeOf(rule, seconds),
    cautions: stageCautions(open.stage),
  } as const;
  const { next, waiting } = rule;
  // waiting asks for nothing: the way out of it is to begin what follows
  const leave = waiting && next !== null && !lineRule(next).waiting ? [beginTap(next)] : endTaps(open.stage);
  return { ...base, first: leave, spoken: spokenOf(rule, headline, seconds) };
}

/** Its name at first; then from the least time on every minute, with the sign to look for. */
function spokenOf({ expected, endSign }: LineRule, headline: string, seconds: number): string {
  const low = expected?.lowSeconds ?? null;
  const most = expected?.highSeconds ?? low;
  if (low === null || most === null || most > calledUpTo || seconds < low) return headline;
  const reached = seconds < low + 60 ? low : Math.max(low, Math.floor(seconds / 60) * 60);
  return `${headline}, ${spokenSpan(reached)}. Look: ${endSign}?`;
}

function expectedSentence({ expected, basis }: LineRule): string {
  const time = expectedWords(expected);
  if (expected === null)
    return `No time is known that it should take; the sign decides (${basisWords[basis]}).`;
  return upperFirst([time, expected.note, basisWords[expected.basis]].filter((each) => each).join(', '));
}

function gaugeOf({ expected }: LineRule, seconds: number): StageView['gauge'] {
  if (expected === null) return null;
  const low = expected.lowSeconds ?? expected.highSeconds;
  const high = expected.highSeconds ?? expected.lowSeconds;
  if (low === null || high === null) return null;
  const whole = Math.max(high * 1.5, seconds * 1.1);
  const open = expected.highSeconds === null;
  const verdict = seconds < low ? 'before' : open || seconds <= high + 2 ? 'within' : 'over';
  const words = {
    before: `${clockOf(Math.ceil(low - seconds))} to go at least`,
    within: open ? 'long enough' : 'in its time: look for the sign',
    over: `${clockOf(seconds - high)} over what is usual`,
  }[verdict];
  return { from: low / whole, to: open ? 1 : high / whole, now: seconds / whole, verdict, words };
}

function upperFirst(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
