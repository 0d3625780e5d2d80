import type { Point } from '../../science/geometry/point.ts';
import { factorInPlace, logDeterminant, solveLower, solveUpper } from './choleskySolve.ts';

/** Constant, x, y: the straight part, free of any prior. */
export const trendTerms = 3;

/** What `solveAxis` leaves. */
export interface Axis {
  /** Cholesky factor of K, the covariance of the displacements. */
  readonly factor: Float64Array;
  /** L⁻¹F and the factor of FᵀK⁻¹F. */
  readonly trendLower: readonly Float64Array[];
  readonly trendFactor: Float64Array;
  /** K⁻¹(y − Fβ) and β. */
  readonly dual: Float64Array;
  readonly beta: Float64Array;
  /** (y − Fβ)ᵀK⁻¹(y − Fβ). */
  readonly misfit: number;
  /** log det K + log det FᵀK⁻¹F. */
  readonly logDeterminants: number;
}

/** Conditioned trend row for a place; lengths in 100 mm keep the small system well scaled. */
export function trendRow([x, y]: Point, middle: Point): [number, number, number] {
  return [1, (x - middle[0]) / 100, (y - middle[1]) / 100];
}

/**
 * Universal kriging of one axis of the stretch, solved once for all places that will be asked: generalised least squares for
 * the straight part, Cholesky factors for the rest.
 * @param places stone mm. @param middle of them, round which the straight part turns.
 * @param values displacements along the axis, mm. @param variances theirs, mm².
 * @param correlation of all pairs, by `correlationsBetween`. @param variance of the stretch about its straight part, mm².
 * @returns null where the matrix is singular.
 */
export function solveAxis(
  places: readonly Point[],
  middle: Point,
  values: Float64Array,
  variances: Float64Array,
  correlation: Float64Array,
  variance: number,
): Axis | null {
  const n = places.length;
  const factor = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) factor[i * n + j] = variance * correlation[i * n + j]!;
    factor[i * n + i]! += variances[i]!;
  }
  if (!factorInPlace(factor, n)) return null;
  const trendLower: Float64Array[] = [];
  for (let term = 0; term < trendTerms; term++) {
    const column = Float64Array.from(places, (place) => trendRow(place, middle)[term]!);
    solveLower(factor, n, column);
    trendLower.push(column);
  }
  const lowered = values.slice();
  solveLower(factor, n, lowered);
  const trendFactor = new Float64Array(trendTerms * trendTerms);
  const beta = new Float64Array(trendTerms);
  for (let a = 0; a < trendTerms; a++) {
    for (let i = 0; i < n; i++) beta[a]! += trendLower[a]![i]! * lowered[i]!;
    for (let b = 0; b <= a; b++) {
      for (let i = 0; i < n; i++) trendFactor[a * trendTerms + b]! += trendLower[a]![i]! * trendLower[b]![i]!;
    }
  }
  if (!factorInPlace(trendFactor, trendTerms)) return null;
  solveLower(trendFactor, trendTerms, beta);
  solveUpper(trendFactor, trendTerms, beta);
  let misfit = 0;
  const dual = lowered;
  for (let i = 0; i < n; i++) {
    for (let term = 0; term < trendTerms; term++) dual[i]! -= trendLower[term]![i]! * beta[term]!;
    misfit += dual[i]! ** 2;
  }
  solveUpper(factor, n, dual);
  const logDeterminants = logDeterminant(factor, n) + logDeterminant(trendFactor, trendTerms);
  return { factor, trendLower, trendFactor, dual, beta, misfit, logDeterminants };
}

/** The mean of places. */
export function middleOf(places: readonly Point[]): Point {
  let x = 0;
  let y = 0;
  for (const place of places) {
    x += place[0] / places.length;
    y += place[1] / places.length;
  }
  return [x, y];
}
