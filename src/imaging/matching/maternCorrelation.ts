import type { Point } from '../../science/geometry/point.ts';

/**
 * Matérn 5/2 correlation of two places, 1 in one place, falling toward 0
 * (Rasmussen & Williams 2006, Gaussian Processes for Machine Learning, eq. 4.17).
 * @param length how far places speak for each other, in the places' unit, above 0.
 */
export function correlationBetween(a: Point, b: Point, length: number): number {
  const x = a[0] - b[0];
  const y = a[1] - b[1];
  const r = (Math.sqrt(5) * Math.sqrt(x * x + y * y)) / length;
  return (1 + r + (r * r) / 3) * Math.exp(-r);
}

/** The correlations of all pairs: the lower triangle of a square matrix, row by row; the rest stays 0. */
export function correlationsBetween(places: readonly Point[], length: number): Float64Array {
  const n = places.length;
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) out[i * n + j] = correlationBetween(places[i]!, places[j]!, length);
  }
  return out;
}
