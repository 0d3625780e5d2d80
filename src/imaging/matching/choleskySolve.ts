/**
 * Cholesky factor of a symmetric positive definite matrix, row by row, in place: the lower triangle becomes L with
 * A = L Lᵀ; the upper triangle is left as it was. Returns false where the matrix is not positive definite.
 */
export function factorInPlace(matrix: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const rowI = i * n;
    for (let j = 0; j <= i; j++) {
      const rowJ = j * n;
      let sum = matrix[rowI + j]!;
      for (let k = 0; k < j; k++) sum -= matrix[rowI + k]! * matrix[rowJ + k]!;
      if (i === j) {
        if (!(sum > 0)) return false;
        matrix[rowI + i] = Math.sqrt(sum);
      } else matrix[rowI + j] = sum / matrix[rowJ + j]!;
    }
  }
  return true;
}

/** Solves L x = b in place. */
export function solveLower(factor: Float64Array, n: number, right: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = right[i]!;
    for (let k = 0; k < i; k++) sum -= factor[i * n + k]! * right[k]!;
    right[i] = sum / factor[i * n + i]!;
  }
}

/** Solves Lᵀ x = b in place. */
export function solveUpper(factor: Float64Array, n: number, right: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    const value = right[i]! / factor[i * n + i]!;
    right[i] = value;
    for (let k = 0; k < i; k++) right[k]! -= factor[i * n + k]! * value;
  }
}

/** Twice the sum of the logarithms of the factor's diagonal: log det A. */
export function logDeterminant(factor: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += 2 * Math.log(factor[i * n + i]!);
  return sum;
}

/** Diagonal of A⁻¹ from its factor. */
export function inverseDiagonal(factor: Float64Array, n: number): Float64Array {
  const diagonal = new Float64Array(n);
  const column = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    column.fill(0);
    column[j] = 1 / factor[j * n + j]!;
    diagonal[j] = column[j]! ** 2;
    for (let i = j + 1; i < n; i++) {
      let sum = 0;
      for (let k = j; k < i; k++) sum -= factor[i * n + k]! * column[k]!;
      column[i] = sum / factor[i * n + i]!;
      diagonal[j]! += column[i]! ** 2;
    }
  }
  return diagonal;
}
