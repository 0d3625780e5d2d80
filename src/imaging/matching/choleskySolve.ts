/** Sum of products of two runs of `length` numbers; four sums side by side keep the processor busy. */
function dot(a: Float64Array, fromA: number, b: Float64Array, fromB: number, length: number): number {
  let first = 0;
  let second = 0;
  let third = 0;
  let fourth = 0;
  let i = fromA;
  let j = fromB;
  for (const end = fromA + (length & ~3); i < end; i += 4, j += 4) {
    first += a[i]! * b[j]!;
    second += a[i + 1]! * b[j + 1]!;
    third += a[i + 2]! * b[j + 2]!;
    fourth += a[i + 3]! * b[j + 3]!;
  }
  for (const end = fromA + length; i < end; i++, j++) first += a[i]! * b[j]!;
  return first + second + third + fourth;
}

/**
 * Cholesky factor of a symmetric positive definite matrix, row by row, in place: the lower triangle becomes L with
 * A = L Lᵀ; the upper triangle is left as it was. Returns false where the matrix is not positive definite.
 */
export function factorInPlace(matrix: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const rowI = i * n;
    for (let j = 0; j <= i; j++) {
      const rowJ = j * n;
      const sum = matrix[rowI + j]! - dot(matrix, rowI, matrix, rowJ, j);
      if (i === j) {
        if (!(sum > 0)) return false;
        matrix[rowI + i] = Math.sqrt(sum);
      } else matrix[rowI + j] = sum / matrix[rowJ + j]!;
    }
  }
  return true;
}

/** Solves L x = b in place. @param factor L as `factorInPlace` leaves it, n × n by rows. @param right b, of n; becomes x. */
export function solveLower(factor: Float64Array, n: number, right: Float64Array): void {
  for (let i = 0; i < n; i++) {
    right[i] = (right[i]! - dot(factor, i * n, right, 0, i)) / factor[i * n + i]!;
  }
}

/** Solves Lᵀ x = b in place, with the same arrays. */
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
      column[i] = -dot(factor, i * n + j, column, j, i - j) / factor[i * n + i]!;
      diagonal[j]! += column[i]! ** 2;
    }
  }
  return diagonal;
}
