import { Matrix, QrDecomposition } from '../algebra/denseMatrices.ts';

/**
 * Weighted least squares by QR: the coefficients that make Σ w (y − Σ c·x)² least. Golub, G. (1965), Numerische Mathematik
 * 7, 206–216, doi 10.1007/BF01436075 (from memory).
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

/**
 * (XᵀX)⁻¹ from the triangle of a QR, never from XᵀX itself: times the variance of one observation, the covariance of the
 * coefficients of `leastSquares`.
 * @param rows X, one array of regressors per observation, all of one length.
 * @returns square, one row per coefficient; null where the observations don't determine the coefficients.
 */
export function inverseCrossProduct(rows: readonly (readonly number[])[]): number[][] | null {
  const size = rows[0]?.length ?? 0;
  if (size === 0 || rows.length < size) return null;
  // Columns of one length each, so that the unit of a parameter decides nothing.
  const lengths = rows[0]!.map((_, k) => Math.hypot(...rows.map((row) => row[k]!)));
  if (lengths.some((length) => !(length > 0 && length < Infinity))) return null;
  const decomposition = new QrDecomposition(
    new Matrix(rows.map((row) => row.map((value, k) => value / lengths[k]!))),
  );
  const triangle = decomposition.upperTriangularMatrix;
  for (let k = 0; k < size; k++) if (!(Math.abs(triangle.get(k, k)) > 1e-14)) return null;
  const inverse = new QrDecomposition(triangle).solve(Matrix.eye(size));
  const product = inverse.mmul(inverse.transpose()).to2DArray();
  return product.map((row, i) => row.map((value, k) => value / (lengths[i]! * lengths[k]!)));
}
