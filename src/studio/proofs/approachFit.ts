import { levenbergMarquardt } from '../../science/statistics/levenbergMarquardt.ts';
import type { Approach } from './approach.ts';
import { shareAt } from './approach.ts';

/** One reading of one tone. */
export interface TonePoint {
  readonly n: number;
  readonly darkness: number;
}

/** The straight-line part of an approach at one rate: best start and rise, and how well both are known for a σ of 1. */
export interface RateFit {
  readonly approach: Approach;
  readonly rise: number;
  /** Standard deviation of the rise for readings of σ 1. */
  readonly riseError: number;
  readonly meanDarkness: number;
  readonly meanShare: number;
  readonly count: number;
  readonly sumOfSquares: number;
}

/** A tone's approach: the best rate, and every other that was tried beside it. */
export interface ApproachFit {
  readonly best: RateFit;
  readonly rates: readonly RateFit[];
}

/** Rates from hardly bent to over after one pull, each a little faster than the one before. */
const slowest = 0.005;
const fastest = 8;
const steps = 120;
const settling = Array.from({ length: steps }, (_, i) => slowest * (fastest / slowest) ** (i / (steps - 1)));
/** Steps beside the best rate, as powers of e: from what a sharp series tells apart to the ladder's own rung. */
const beside = Array.from({ length: 56 }, (_, i) => 1e-4 * 1.12 ** i).flatMap((step) => [step, -step]);
const runningAway = Array.from({ length: 40 }, (_, i) => -(i + 1) / 40);

/**
 * Fits an approach to the readings of one tone by least squares; the rate by Levenberg and Marquardt from the best of a
 * ladder of rates, start and rise beside it.
 * @param points four or more, in order of their numbers, none twice.
 * @param mayRunAway whether rates below 0 are tried as well: a tone that gains more with every pull.
 */
export function fitApproach(points: readonly TonePoint[], mayRunAway: boolean): ApproachFit {
  const ladder = [...(mayRunAway ? [...runningAway].reverse() : []), 0, ...settling];
  const rates = ladder.map((rate) => fitAtRate(points, rate));
  const near = rates.reduce((best, fit) => (fit.sumOfSquares < best.sumOfSquares ? fit : best));
  const refined = refine(points, near);
  const close = beside.map((step) => fitAtRate(points, refined.approach.rate * Math.exp(step)));
  return { best: refined, rates: [...rates, refined, ...close] };
}

/** Line through the readings over the share of the rise at one rate. */
function fitAtRate(points: readonly TonePoint[], rate: number): RateFit {
  const first = points[0]!.n;
  const approach = { first, span: points.at(-1)!.n - first, rate };
  const shares = points.map(({ n }) => shareAt(approach, n));
  const count = points.length;
  const meanShare = shares.reduce((sum, share) => sum + share, 0) / count;
  const meanDarkness = points.reduce((sum, { darkness }) => sum + darkness, 0) / count;
  const spread = shares.reduce((sum, share) => sum + (share - meanShare) ** 2, 0);
  const rise =
    points.reduce((sum, { darkness }, i) => sum + (shares[i]! - meanShare) * (darkness - meanDarkness), 0) /
    spread;
  const sumOfSquares = points.reduce(
    (sum, { darkness }, i) => sum + (darkness - meanDarkness - rise * (shares[i]! - meanShare)) ** 2,
    0,
  );
  return { approach, rise, riseError: 1 / Math.sqrt(spread), meanDarkness, meanShare, count, sumOfSquares };
}

/** From the nearest rung of the ladder to the rate itself; the rung where the fit leads out of the ladder or nowhere better. */
function refine(points: readonly TonePoint[], near: RateFit): RateFit {
  const { approach, rise, meanDarkness, meanShare } = near;
  const start = [meanDarkness - rise * meanShare, rise, approach.rate];
  const fit = levenbergMarquardt(
    ([low, gain, rate]) =>
      points.map(({ n, darkness }) => darkness - low! - gain! * shareAt({ ...approach, rate: rate! }, n)),
    start,
  );
  const rate = fit?.parameters[2] ?? approach.rate;
  if (!(rate > (approach.rate < 0 ? runningAway.at(-1)! : 0) && rate < fastest)) return near;
  const refined = fitAtRate(points, rate);
  return refined.sumOfSquares < near.sumOfSquares ? refined : near;
}
