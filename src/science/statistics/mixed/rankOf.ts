import { Matrix, SingularValueDecomposition } from '../../algebra/denseMatrices.ts';

/** How many of a matrix's columns are independent. @param rows of one length, at least one. */
export function rankOf(rows: readonly (readonly number[])[]): number {
  return new SingularValueDecomposition(new Matrix(rows.map((row) => [...row])), {
    autoTranspose: true,
  }).rank;
}
