/** The door to the matrix library: dense real matrices and their decompositions. */
export {
  CholeskyDecomposition,
  EigenvalueDecomposition,
  Matrix,
  QrDecomposition,
  SingularValueDecomposition,
} from 'ml-matrix';
