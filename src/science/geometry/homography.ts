import { adjugate3, determinant3, multiply3 } from '../algebra/matrix3.ts';
import type { Point } from './point.ts';

/** A plane-to-plane projective map, row-major 3×3, scaled so that the last entry is 1. */
export type Homography = readonly number[];

/**
 * Maps a point of the first plane into the second.
 * Returns infinities or NaN for points on the horizon (third coordinate 0); the caller keeps to points that are seen.
 */
export function applyHomography(h: Homography, [x, y]: Point): Point {
  const w = h[6]! * x + h[7]! * y + h[8]!;
  return [(h[0]! * x + h[1]! * y + h[2]!) / w, (h[3]! * x + h[4]! * y + h[5]!) / w];
}

/** The map that does `first`, then `second`. */
export function composeHomographies(second: Homography, first: Homography): Homography {
  const product = multiply3(second, first);
  return product.map((value) => value / product[8]!);
}

/** The map from the second plane back to the first, or null where the map is singular. */
export function invertHomography(h: Homography): Homography | null {
  const adjugate = adjugate3(h);
  const last = adjugate[8]!;
  const determinant = determinant3(h);
  if (!Number.isFinite(determinant) || determinant === 0 || last === 0) return null;
  return adjugate.map((value) => value / last);
}

/** Determinant of the map's derivative at a point: area ratio, negative where the map mirrors. */
export function jacobianDeterminant(h: Homography, [x, y]: Point): number {
  const w = h[6]! * x + h[7]! * y + h[8]!;
  const u = (h[0]! * x + h[1]! * y + h[2]!) / w;
  const v = (h[3]! * x + h[4]! * y + h[5]!) / w;
  const ux = (h[0]! - u * h[6]!) / w;
  const uy = (h[1]! - u * h[7]!) / w;
  const vx = (h[3]! - v * h[6]!) / w;
  const vy = (h[4]! - v * h[7]!) / w;
  return ux * vy - uy * vx;
}

/** Moves points so that their centroid is 0 and their mean distance √2; returns scale and centroid. */
function conditioning(points: readonly Point[]): { scale: number; x: number; y: number } {
  let x = 0;
  let y = 0;
  for (const point of points) {
    x += point[0] / points.length;
    y += point[1] / points.length;
  }
  let distance = 0;
  for (const point of points) distance += Math.hypot(point[0] - x, point[1] - y) / points.length;
  return { scale: distance > 0 ? Math.SQRT2 / distance : 1, x, y };
}

/** Solves the symmetric 8×8 system in place by Gaussian elimination with pivoting; null where singular. */
function solveEight(matrix: Float64Array, right: Float64Array): Float64Array | null {
  const n = 8;
  const least = 1e-11 * Math.max(...matrix.filter((_, index) => index % (n + 1) === 0));
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot;
    for (let row = pivot + 1; row < n; row++) {
      if (Math.abs(matrix[row * n + pivot]!) > Math.abs(matrix[best * n + pivot]!)) best = row;
    }
    if (Math.abs(matrix[best * n + pivot]!) <= least) return null;
    if (best !== pivot) {
      for (let column = 0; column < n; column++) {
        const kept = matrix[pivot * n + column]!;
        matrix[pivot * n + column] = matrix[best * n + column]!;
        matrix[best * n + column] = kept;
      }
      const kept = right[pivot]!;
      right[pivot] = right[best]!;
      right[best] = kept;
    }
    for (let row = pivot + 1; row < n; row++) {
      const factor = matrix[row * n + pivot]! / matrix[pivot * n + pivot]!;
      if (factor === 0) continue;
      for (let column = pivot; column < n; column++) {
        matrix[row * n + column]! -= factor * matrix[pivot * n + column]!;
      }
      right[row]! -= factor * right[pivot]!;
    }
  }
  const solution = new Float64Array(n);
  for (let row = n - 1; row >= 0; row--) {
    let sum = right[row]!;
    for (let column = row + 1; column < n; column++) sum -= matrix[row * n + column]! * solution[column]!;
    solution[row] = sum / matrix[row * n + row]!;
  }
  return solution;
}

/**
 * The homography that carries `from` onto `to`: exact for four points, least squares for more.
 * Normalised direct linear transform with the last entry fixed at 1 after conditioning (Hartley, R. (1997),
 * In defense of the eight-point algorithm, IEEE PAMI 19(6), doi 10.1109/34.601246), then reweighted twice by the
 * third coordinate so that it is the distance in the second plane that is least.
 * @param weights one non-negative weight a point (inverse variance); all 1 when left out.
 * @returns null for fewer than four points or a degenerate position (three of four on a line).
 */
export function homographyFromPoints(
  from: readonly Point[],
  to: readonly Point[],
  weights?: ArrayLike<number>,
): Homography | null {
  const count = from.length;
  if (count < 4 || to.length !== count) return null;
  const source = conditioning(from);
  const target = conditioning(to);
  let solution: Float64Array | null = null;
  const rounds = count === 4 ? 1 : 3;
  for (let round = 0; round < rounds; round++) {
    const matrix = new Float64Array(64);
    const right = new Float64Array(8);
    for (let index = 0; index < count; index++) {
      const x = (from[index]![0] - source.x) * source.scale;
      const y = (from[index]![1] - source.y) * source.scale;
      const u = (to[index]![0] - target.x) * target.scale;
      const v = (to[index]![1] - target.y) * target.scale;
      let weight = weights ? weights[index]! : 1;
      if (solution) weight /= (solution[6]! * x + solution[7]! * y + 1) ** 2;
      const rowU = [x, y, 1, 0, 0, 0, -u * x, -u * y];
      const rowV = [0, 0, 0, x, y, 1, -v * x, -v * y];
      for (let i = 0; i < 8; i++) {
        right[i]! += weight * (rowU[i]! * u + rowV[i]! * v);
        for (let j = 0; j < 8; j++)
          matrix[i * 8 + j]! += weight * (rowU[i]! * rowU[j]! + rowV[i]! * rowV[j]!);
      }
    }
    solution = solveEight(matrix, right);
    if (!solution?.every((value) => Math.abs(value) < 1e6)) return null;
  }
  const normalised = [...solution!, 1];
  if (Math.abs(determinant3(normalised)) < 1e-9) return null;
  const fromConditioned = [
    source.scale,
    0,
    -source.scale * source.x,
    0,
    source.scale,
    -source.scale * source.y,
    0,
    0,
    1,
  ];
  const toPlain = [1 / target.scale, 0, target.x, 0, 1 / target.scale, target.y, 0, 0, 1];
  const product = composeHomographies(composeHomographies(toPlain, normalised), fromConditioned);
  return product.every(Number.isFinite) ? product : null;
}
