import { normalDraw, seededRandom } from '../../../foundation/random.ts';
import type { TrialFactor, TrialPower, TrialScatter, TrialWish } from '../../../records/trialDesign.ts';
import { studentQuantile } from '../../../science/statistics/distributions.ts';
import {
  allWithinOfControl,
  passingBound,
  studentizedRangeBelow,
} from '../../../science/statistics/manyComparisons.ts';
import { errorsOf, type StratumError } from './stratumErrors.ts';

type Size = Pick<
  TrialWish,
  'stones' | 'whole' | 'sub' | 'perStone' | 'patchRepeats' | 'stripRepeats' | 'control' | 'layout' | 'blocks'
>;

/** What rooms may scatter by, coverage; from memory, to be replaced by this room's own. */
export const usualScatter: Readonly<Record<'low' | 'middle' | 'high', TrialScatter>> = {
  low: { stone: 0.02, strip: 0.01, patch: 0.02 },
  middle: { stone: 0.04, strip: 0.03, patch: 0.04 },
  high: { stone: 0.08, strip: 0.06, patch: 0.08 },
};

/** How often a difference is to be noticed. */
export const wantedShare = 0.8;
const draws = 4000;
/** The same draws for every size, so that designs are compared without the luck of the draw. */
const seed = 20_260_301;

/** What is noticed how often, by simulation; what was drawn or solved once is kept for the sizes that come after. */
export interface Noticing {
  /** The smallest difference noticed 8 times in 10; null without a replicate. */
  readonly smallest: (
    levels: readonly string[],
    control: string | null,
    error: StratumError,
  ) => number | null;
  /** How often a difference is noticed, 0..1; 0 without a replicate. */
  readonly chance: (
    levels: readonly string[],
    control: string | null,
    error: StratumError,
    difference: number,
  ) => number;
}

interface Drawn {
  readonly score: number;
  readonly scale: number;
}

/** By simulation of the test that `analyseTrial` makes, to about 2 %. Intervals are those of the whole family of differences. */
export function noticingBySimulation(): Noticing {
  const drawsOf = kept(drawnFor);
  const bounds = kept((key: string) => {
    const [count, controlled, df] = JSON.parse(key) as [number, boolean, number];
    return boundOf(count, controlled, df);
  });
  // Of this many standard errors, how often is it noticed?
  const shareOf = (
    levels: readonly string[],
    control: string | null,
    df: number,
  ): ((errors: number) => number) => {
    const controlled = control !== null && levels.includes(control);
    const bound = bounds(JSON.stringify([levels.length, controlled, df]));
    const drawn = drawsOf(df);
    return (errors) => {
      let noticed = 0;
      for (const { score, scale } of drawn) if (Math.abs(errors + score) > bound * scale) noticed++;
      return noticed / draws;
    };
  };
  return {
    smallest: (levels, control, { df, variance }) =>
      df < 1 ? null : passingBound(shareOf(levels, control, df), wantedShare) * Math.sqrt(variance),
    chance: (levels, control, { df, variance }, difference) =>
      df < 1 ? 0 : shareOf(levels, control, df)(difference / Math.sqrt(variance)),
  };
}

/** The smallest difference of two levels that a trial would notice 8 times in 10. */
export function trialPower(
  size: Size,
  of: TrialPower['of'],
  scatter: TrialScatter,
  noticing = noticingBySimulation(),
): TrialPower {
  const { whole, sub, perStone } = errorsOf(size, scatter);
  const noticedOf = (factor: TrialFactor | null | undefined, error: StratumError) =>
    factor && factor.levels.length > 1 ? noticing.smallest(factor.levels, size.control, error) : null;
  return {
    of,
    scatter,
    whole: noticedOf(size.whole, whole),
    sub: noticedOf(size.sub, sub),
    ...(size.perStone ? { perStone: noticedOf(size.perStone, perStone) } : {}),
  };
}

function drawnFor(df: number): Drawn[] {
  const random = seededRandom(seed);
  return Array.from({ length: draws }, () => {
    const score = normalDraw(random);
    let squares = 0;
    // Beyond this many the mean of squares hardly differs from 1, and drawing more takes time.
    const terms = Math.min(df, 200);
    for (let k = 0; k < terms; k++) squares += normalDraw(random) ** 2;
    return { score, scale: Math.sqrt(squares / terms) };
  });
}

function kept<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const found = new Map<Key, Value>();
  return (key) => {
    const known = found.get(key);
    if (known !== undefined) return known;
    const value = work(key);
    found.set(key, value);
    return value;
  };
}

/** How many standard errors a difference must reach, as `analyseTrial` asks. */
function boundOf(count: number, controlled: boolean, df: number): number {
  if (count === 2) return studentQuantile(0.975, df);
  if (controlled) {
    const ties = Array.from({ length: count - 1 }, () => Math.SQRT1_2);
    return passingBound((score) => allWithinOfControl(score, ties, df), 0.95);
  }
  return passingBound((range) => studentizedRangeBelow(range, count, df), 0.95) / Math.SQRT2;
}
