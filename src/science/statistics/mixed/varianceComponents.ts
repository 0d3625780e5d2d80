import { CholeskyDecomposition, Matrix, QrDecomposition } from '../../algebra/denseMatrices.ts';
import { independentColumns } from './estimable.ts';
import { rankOf } from './rankOf.ts';

/** A source of scatter: which group each observation belongs to, 0, 1, … ; observations of one group move together. */
export type Grouping = readonly number[];

/** A fitted mixed linear model. */
export interface MixedFit {
  /** One variance per grouping, the residual last; it may come out below 0 where groups differ less than chance would have it. */
  readonly variances: readonly number[];
  /** Inverse of the expected information of `variances`, square. */
  readonly varianceCovariance: Matrix;
  readonly coefficients: readonly number[];
  /** Covariance of the coefficients, square. */
  readonly covariance: Matrix;
  /**
   * Per grouping and the residual: groups × coefficients; the sum of squares of (this × contrast) is the derivative of that
   * contrast's variance by that component.
   */
  readonly sensitivities: readonly Matrix[];
}

const mostRounds = 200;
/** Relative change of the variances at which the fit has settled; far below what any decision could notice. */
const settled = 1e-12;

/**
 * Restricted maximum likelihood of y = Xβ + Σ Zu + e by Fisher scoring, each variance left free to fall below 0 as long as
 * the whole stays a covariance, so that balanced data give the classical strata's mean squares.
 * Patterson, H. D. & Thompson, R. (1971), Biometrika 58, 545–554, doi 10.1093/biomet/58.3.545.
 * @param rows X, one array of regressors per observation, of full column rank.
 * @param targets y, one per observation.
 * @param groupings the random terms, none of them confounded with X or one another.
 * @returns null where the fit does not settle on a covariance, or X is not of full rank.
 */
export function fitVarianceComponents(
  rows: readonly (readonly number[])[],
  targets: readonly number[],
  groupings: readonly Grouping[],
): MixedFit | null {
  const count = targets.length;
  const design = new Matrix(rows.map((row) => [...row]));
  if (count <= design.columns || independentColumns(rows).length < design.columns) return null;
  const response = Matrix.columnVector([...targets]);
  const sources = [...groupings, targets.map((_, i) => i)].map(sourceOf);
  const spread = variance(targets);
  if (!(spread > 0)) return null;
  let variances = sources.map(() => spread / sources.length);
  for (let round = 0; round < mostRounds; round++) {
    const at = evaluate(design, response, sources, variances);
    if (!at) return null;
    if (rankOf(at.information.to2DArray()) < sources.length) return null;
    const wanted = new QrDecomposition(at.information)
      .solve(Matrix.columnVector([...at.quadratics]))
      .to1DArray();
    const next = nearestCovariance(sources, variances, wanted);
    if (!next) return null;
    const change = Math.max(...next.map((value, k) => Math.abs(value - variances[k]!)));
    variances = next;
    if (change <= settled * spread) return finish(design, response, sources, variances);
  }
  return null;
}

interface Source {
  readonly grouping: Grouping;
  readonly groups: number;
}

interface Evaluation {
  readonly information: Matrix;
  /** ½ yᵀP K P y per component. */
  readonly quadratics: readonly number[];
}

/** Expected information and the scoring equations' right side at given variances. */
function evaluate(
  design: Matrix,
  response: Matrix,
  sources: readonly Source[],
  variances: readonly number[],
): Evaluation | null {
  const solved = weigh(design, sources, variances);
  if (!solved) return null;
  const { inverse, weighted, covariance } = solved;
  const projector = Matrix.sub(inverse, weighted.mmul(covariance).mmul(weighted.transpose()));
  const residual = projector.mmul(response);
  const halves = sources.map((source) => groupRows(projector, source).transpose());
  const information = new Matrix(
    halves.map((half) => sources.map((source) => sumOfSquares(groupRows(half, source)) / 2)),
  );
  const quadratics = sources.map((source) => sumOfSquares(groupRows(residual, source)) / 2);
  return { information, quadratics };
}

function finish(
  design: Matrix,
  response: Matrix,
  sources: readonly Source[],
  variances: readonly number[],
): MixedFit | null {
  const at = evaluate(design, response, sources, variances);
  const solved = weigh(design, sources, variances);
  if (!at || !solved) return null;
  const { weighted, covariance } = solved;
  const spreadOut = weighted.mmul(covariance);
  return {
    variances,
    varianceCovariance: new QrDecomposition(at.information).solve(Matrix.eye(variances.length)),
    coefficients: spreadOut.transpose().mmul(response).to1DArray(),
    covariance,
    sensitivities: sources.map((source) => groupRows(spreadOut, source)),
  };
}

/** V⁻¹, V⁻¹X and (XᵀV⁻¹X)⁻¹; null where V is no covariance. */
function weigh(design: Matrix, sources: readonly Source[], variances: readonly number[]) {
  const decomposition = covarianceOf(sources, variances);
  if (!decomposition) return null;
  const inverse = decomposition.solve(Matrix.eye(design.rows));
  const weighted = inverse.mmul(design);
  const cross = new QrDecomposition(design.transpose().mmul(weighted));
  return { inverse, weighted, covariance: cross.solve(Matrix.eye(design.columns)) };
}

function covarianceOf(
  sources: readonly Source[],
  variances: readonly number[],
): CholeskyDecomposition | null {
  const size = sources[0]!.grouping.length;
  const sum = Matrix.zeros(size, size);
  for (const [k, { grouping }] of sources.entries())
    for (const [row, group] of grouping.entries())
      for (const [column, other] of grouping.entries())
        if (group === other) sum.set(row, column, sum.get(row, column) + variances[k]!);
  const decomposition = new CholeskyDecomposition(sum);
  return decomposition.isPositiveDefinite() ? decomposition : null;
}

/** As far from `from` towards `to` as the whole stays a covariance. */
function nearestCovariance(
  sources: readonly Source[],
  from: readonly number[],
  to: readonly number[],
): number[] | null {
  for (let share = 1; share > 1e-6; share /= 2) {
    const tried = from.map((value, k) => value + share * (to[k]! - value));
    if (covarianceOf(sources, tried)) return tried;
  }
  return null;
}

function sourceOf(grouping: Grouping): Source {
  return { grouping, groups: Math.max(...grouping) + 1 };
}

/** Sums the rows of each group: groups × columns. */
function groupRows(matrix: Matrix, { grouping, groups }: Source): Matrix {
  const sums = Matrix.zeros(groups, matrix.columns);
  for (const [row, group] of grouping.entries())
    for (let column = 0; column < matrix.columns; column++)
      sums.set(group, column, sums.get(group, column) + matrix.get(row, column));
  return sums;
}

function sumOfSquares(matrix: Matrix): number {
  return matrix.to1DArray().reduce((sum, value) => sum + value * value, 0);
}

function variance(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
}
