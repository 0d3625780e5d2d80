import { Matrix, SingularValueDecomposition } from '../../algebra/denseMatrices.ts';

/**
 * How many of a matrix's columns are independent: its singular values above rounding (Golub & Kahan 1965, doi
 * 10.1137/0702016, from memory; computed by the matrix library). @param rows of one length, at least one.
 */
export function rankOf(rows: readonly (readonly number[])[]): number {
  return new SingularValueDecomposition(new Matrix(rows.map((row) => [...row])), {
    autoTranspose: true,
  }).rank;
}
