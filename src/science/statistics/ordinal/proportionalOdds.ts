import { CholeskyDecomposition, Matrix } from '../../algebra/denseMatrices.ts';
import { type OrdinalPoint, ordinalLikelihood } from './ordinalLikelihood.ts';

/** A fitted proportional-odds model. */
export interface ProportionalOddsFit {
  /** Log odds of category k or lower at η = 0, rising, one fewer than categories. */
  readonly thresholds: readonly number[];
  /** One per regressor; above 0 raises the odds of a higher category. */
  readonly coefficients: readonly number[];
  /** Inverse of the penalised information of the coefficients, thresholds settled along. */
  readonly covariance: readonly (readonly number[])[];
  /** Without the penalty. */
  readonly logLikelihood: number;
}

const mostRounds = 200;
/** Newton steps this small change nothing that is told. */
const settled = 1e-8;
/** What summing a likelihood leaves uncertain, relative. */
const rounding = 1e-13;

/**
 * Ordered readings y by logit P(y ≤ k) = θ_k − xβ, with a ridge ½·Σ penalty·β² taken from the log likelihood, so that
 * a level where everything held still has finite odds. Newton's steps, halved while they do not climb.
 * McCullagh, P. (1980), J. Royal Statistical Society B 42, 109–142, doi 10.1111/j.2517-6161.1980.tb01109.x;
 * the ridge after le Cessie, S. & van Houwelingen, J. C. (1992), Applied Statistics 41, 191–201, doi 10.2307/2347628.
 * @param rows x, one array of regressors per observation, without a constant.
 * @param categories y, whole, 0 … `count` − 1, one per observation; each category must occur.
 * @param count of categories, at least 2.
 * @param penalty one per regressor, 0 or more; 0 everywhere is McCullagh's model.
 * @param weights how often each observation counts, 0 or more; 1 where left out.
 * @returns null where a category never occurs or the likelihood has no summit, as without a penalty where a level separates.
 */
export function fitProportionalOdds(
  rows: readonly (readonly number[])[],
  categories: readonly number[],
  count: number,
  penalty: readonly number[],
  weights: readonly number[] = categories.map(() => 1),
): ProportionalOddsFit | null {
  const start = startAt(categories, weights, count, penalty.length);
  if (!start) return null;
  const data = { rows, categories, weights, penalty, thresholds: count - 1 };
  let place = start;
  let here = ordinalLikelihood(data, place);
  for (let round = 0; round < mostRounds && here; round++) {
    const solver = new CholeskyDecomposition(new Matrix(here.information.map((row) => [...row])));
    if (!solver.isPositiveDefinite()) return null;
    const step = solver.solve(Matrix.columnVector([...here.slope])).to1DArray();
    // So near the summit, the likelihood's own rounding is all that is left to climb.
    if (Math.max(...step.map(Math.abs)) < settled) return finish(place, here, solver, count - 1);
    const climbed = climb(data, place, here, step);
    if (!climbed) return null;
    [place, here] = [climbed.place, climbed.point];
    // Far out nothing changes any more: the summit lies at infinity.
    if (Math.max(...place.map(Math.abs)) > 25) return null;
  }
  return null;
}

type Data = Parameters<typeof ordinalLikelihood>[0];

function climb(data: Data, from: readonly number[], here: OrdinalPoint, step: readonly number[]) {
  for (let share = 1; share > 1e-10; share /= 2) {
    const place = from.map((value, k) => value + share * step[k]!);
    const point = ordinalLikelihood(data, place);
    if (point && point.penalised >= here.penalised - rounding * Math.abs(here.penalised))
      return { place, point };
  }
  return null;
}

function finish(
  place: readonly number[],
  point: OrdinalPoint,
  solver: CholeskyDecomposition,
  thresholds: number,
): ProportionalOddsFit {
  const inverse = solver.solve(Matrix.eye(place.length)).to2DArray();
  return {
    thresholds: place.slice(0, thresholds),
    coefficients: place.slice(thresholds),
    covariance: inverse.slice(thresholds).map((row) => row.slice(thresholds)),
    logLikelihood: point.logLikelihood,
  };
}

/** Thresholds at the shares as they stand, no effects; null where a category never occurs. */
function startAt(
  categories: readonly number[],
  weights: readonly number[],
  count: number,
  regressors: number,
): number[] | null {
  const totals = Array.from({ length: count }, () => 0);
  for (const [i, category] of categories.entries()) totals[category]! += weights[i]!;
  if (totals.some((total) => !(total > 0))) return null;
  const all = totals.reduce((sum, total) => sum + total, 0);
  let below = 0;
  const thresholds = totals.slice(0, -1).map((total) => {
    below += total;
    return Math.log(below / (all - below));
  });
  return [...thresholds, ...Array.from({ length: regressors }, () => 0)];
}
