import { EigenvalueDecomposition, Matrix } from '../../algebra/denseMatrices.ts';
import { fisherAbove } from '../distributions.ts';
import type { MixedFit } from './varianceComponents.ts';

/** A sum of coefficients with its standard error and degrees of freedom. */
export interface Contrast {
  readonly value: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
}

/** A test that several contrasts are all 0. */
export interface JointTest {
  readonly df: number;
  readonly denDf: number;
  readonly f: number;
  readonly p: number;
}

/**
 * A contrast's value and standard error; its degrees of freedom by matching the variance of its own variance.
 * Satterthwaite, F. E. (1946), Biometrics Bulletin 2, 110–114, doi 10.2307/3002019.
 * @param weights one per coefficient.
 * @param mostDf never more than these degrees of freedom: those of the stratum that the contrast lives in.
 */
export function contrastOf(fit: MixedFit, weights: readonly number[], mostDf = Infinity): Contrast {
  const row = Matrix.rowVector([...weights]);
  const variance = row.mmul(fit.covariance).mmul(row.transpose()).get(0, 0);
  const slopes = fit.sensitivities.map((sensitivity) =>
    sensitivity
      .mmul(row.transpose())
      .to1DArray()
      .reduce((sum, value) => sum + value * value, 0),
  );
  const slope = Matrix.columnVector(slopes);
  const spread = slope.transpose().mmul(fit.varianceCovariance).mmul(slope).get(0, 0);
  const matched = spread > 0 ? (2 * variance * variance) / spread : Infinity;
  return {
    value: weights.reduce((sum, weight, k) => sum + weight * fit.coefficients[k]!, 0),
    standardError: Math.sqrt(variance),
    degreesOfFreedom: Math.min(matched, mostDf),
  };
}

/** Covariance of two contrasts. @param one @param other weights, one per coefficient. */
export function contrastCovariance(fit: MixedFit, one: readonly number[], other: readonly number[]): number {
  return Matrix.rowVector([...one])
    .mmul(fit.covariance)
    .mmul(Matrix.columnVector([...other]))
    .get(0, 0);
}

/**
 * Tests that all contrasts are 0 at once, by F with denominators matched contrast by contrast.
 * Fai, A. H.-T. & Cornelius, P. L. (1996), J. Statistical Computation and Simulation 54, 363–378,
 * doi 10.1080/00949659608811740.
 * @param weights one row per contrast, independent of each other.
 * @param mostDf never more denominator degrees of freedom than these.
 */
export function jointTest(
  fit: MixedFit,
  weights: readonly (readonly number[])[],
  mostDf = Infinity,
): JointTest {
  const rows = new Matrix(weights.map((row) => [...row]));
  const covariance = rows.mmul(fit.covariance).mmul(rows.transpose());
  const turned = new EigenvalueDecomposition(covariance, { assumeSymmetric: true }).eigenvectorMatrix
    .transpose()
    .mmul(rows)
    .to2DArray();
  const parts = turned.map((row) => contrastOf(fit, row));
  const f = parts.reduce((sum, part) => sum + (part.value / part.standardError) ** 2, 0) / parts.length;
  const denDf = Math.min(sharedDf(parts.map((part) => part.degreesOfFreedom)), mostDf);
  return { df: parts.length, denDf, f, p: fisherAbove(f, parts.length, denDf) };
}

/** One denominator for all: by the mean of the F that each part's own would give. */
function sharedDf(each: readonly number[]): number {
  const least = Math.min(...each);
  if (each.length === 1 || Math.max(...each) - least < 1e-6 * least) return least;
  if (least <= 2) return least;
  const expectation = each.reduce((sum, df) => sum + (df === Infinity ? 1 : df / (df - 2)), 0);
  return (2 * expectation) / (expectation - each.length);
}
