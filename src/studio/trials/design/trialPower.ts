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
const wantedShare = 0.8;
const draws = 4000;
/** The same draws for every size, so that designs are compared without the luck of the draw. */
const seed = 20_260_301;

/**
 * The smallest difference of two levels that a trial would notice 8 times in 10, by simulation of the test that
 * `analyseTrial` makes, to about 2 %. Intervals are those of the whole family of differences.
 */
export function trialPower(size: Size, of: TrialPower['of'], scatter: TrialScatter): TrialPower {
  const { whole, sub, perStone } = errorsOf(size, scatter);
  const noticedOf = (factor: TrialFactor | null | undefined, { df, variance }: StratumError) =>
    factor && factor.levels.length > 1 ? smallest(factor.levels, size.control, df, variance) : null;
  return {
    of,
    scatter,
    whole: noticedOf(size.whole, whole),
    sub: noticedOf(size.sub, sub),
    ...(size.perStone ? { perStone: noticedOf(size.perStone, perStone) } : {}),
  };
}

function smallest(
  levels: readonly string[],
  control: string | null,
  df: number,
  variance: number,
): number | null {
  if (df < 1) return null;
  const bound = boundOf(levels, control, df);
  const random = seededRandom(seed);
  const drawn = Array.from({ length: draws }, () => {
    const score = normalDraw(random);
    let squares = 0;
    // Beyond this many the mean of squares hardly differs from 1, and drawing more takes time.
    const terms = Math.min(df, 200);
    for (let k = 0; k < terms; k++) squares += normalDraw(random) ** 2;
    return { score, scale: Math.sqrt(squares / terms) };
  });
  const noticed = (difference: number) =>
    drawn.filter(({ score, scale }) => Math.abs(difference + score) > bound * scale).length / draws;
  return passingBound(noticed, wantedShare) * Math.sqrt(variance);
}

/** How many standard errors a difference must reach, as `analyseTrial` asks. */
function boundOf(levels: readonly string[], control: string | null, df: number): number {
  const count = levels.length;
  if (count === 2) return studentQuantile(0.975, df);
  if (control !== null && levels.includes(control)) {
    const ties = Array.from({ length: count - 1 }, () => Math.SQRT1_2);
    return passingBound((score) => allWithinOfControl(score, ties, df), 0.95);
  }
  return passingBound((range) => studentizedRangeBelow(range, count, df), 0.95) / Math.SQRT2;
}
