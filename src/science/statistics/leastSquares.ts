import { Matrix, QrDecomposition } from 'ml-matrix';

/**
 * Weighted least squares by QR: the coefficients that make Σ w (y − Σ c·x)² least.
 * @param rows one array of regressors per observation, all of one length.
 * @param targets y per observation.
 * @param weights 0 or more per observation; null: all 1.
 * @returns coefficients; null where there are fewer observations than coefficients or they don't determine them.
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  targets: ArrayLike<number>,
  weights: ArrayLike<number> | null,
): number[] | null {
  const size = rows[0]?.length ?? 0;
  if (size === 0 || rows.length < size) return null;
  const root = (i: number) => Math.sqrt(weights ? weights[i]! : 1);
  const left = new Matrix(rows.map((row, i) => row.map((value) => value * root(i))));
  const right = Matrix.columnVector(rows.map((_, i) => targets[i]! * root(i)));
  const decomposition = new QrDecomposition(left);
  return decomposition.isFullRank() ? decomposition.solve(right).to1DArray() : null;
}
