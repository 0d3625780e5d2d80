import type { Point } from '../../science/geometry/point.ts';
import { factorInPlace, inverseDiagonal, logDeterminant, solveLower, solveUpper } from './choleskySolve.ts';
import { correlationBetween, correlationsBetween } from './maternCorrelation.ts';

/** One tile's word on how far the print still lies from where it is thought to be. */
export interface Displacement {
  readonly stoneMm: Point;
  readonly dxMm: number;
  readonly dyMm: number;
  /** Predicted variances, mm². */
  readonly varianceX: number;
  readonly varianceY: number;
}

/** How far tiles speak for their neighbours, and how much their own variances are to be believed. */
export interface KrigingScale {
  /** Length of the Matérn 5/2 covariance, mm. */
  readonly lengthMm: number;
  /** Variance of the stretch about its straight part, mm². */
  readonly variance: number;
  /** True variance of a tile over its predicted one. */
  readonly noiseFactor: number;
}

/** A fitted stretch. */
export interface StretchFit {
  readonly scale: KrigingScale;
  readonly displacements: readonly Displacement[];
  /** Displacement at a place and the standard deviation of its error, along each axis, mm. */
  at(stoneMm: Point): { dx: number; dy: number };
  sdAt(stoneMm: Point): { x: number; y: number };
  /** For each displacement, how far the fit without it is from it, in standard deviations of that prediction (x and y). */
  leftOut(): { x: Float64Array; y: Float64Array };
}

/** Constant, x, y: the straight part, free of any prior. */
const trendTerms = 3;

interface Axis {
  readonly factor: Float64Array;
  /** L⁻¹F and the factor of FᵀK⁻¹F. */
  readonly trendLower: readonly Float64Array[];
  readonly trendFactor: Float64Array;
  /** K⁻¹(y − Fβ) and β. */
  readonly dual: Float64Array;
  readonly beta: Float64Array;
  readonly misfit: number;
  readonly logDeterminants: number;
}

/** Conditioned trend row for a place; lengths in 100 mm keep the small system well scaled. */
function trendRow([x, y]: Point, middle: Point): [number, number, number] {
  return [1, (x - middle[0]) / 100, (y - middle[1]) / 100];
}

function solveAxis(
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

function middleOf(places: readonly Point[]): Point {
  let x = 0;
  let y = 0;
  for (const place of places) {
    x += place[0] / places.length;
    y += place[1] / places.length;
  }
  return [x, y];
}

/** Lengths tried, as shares of the work rectangle's diagonal, and stretch variances over the median tile variance. */
const lengthShares = [0.12, 0.2, 0.35, 0.6, 1.1];
const varianceRatios = [0.1, 1, 10, 100, 1000, 10000];

/** Most displacements used to judge length and variance; the fit itself uses all. */
const mostForLikelihood = 130;

/**
 * Chooses length, variance and noise factor by restricted maximum likelihood over a small grid, the noise factor in closed
 * form. Both axes share them. `lengths` (mm) are the ones tried. At least 8 displacements are needed; with fewer the fallback is no stretch but the straight part.
 */
export function chooseKrigingScale(
  displacements: readonly Displacement[],
  diagonalMm: number,
  lengths: readonly number[] = lengthShares.map((share) => share * diagonalMm),
): KrigingScale {
  const every = Math.max(1, Math.ceil(displacements.length / mostForLikelihood));
  const some = displacements.filter((_, index) => index % every === 0);
  const sorted = some.map((d) => d.varianceX + d.varianceY).sort((a, b) => a - b);
  const typical = (sorted[sorted.length >> 1] ?? 1) / 2;
  const places = some.map((d) => d.stoneMm);
  const middle = middleOf(places);
  const dx = Float64Array.from(some, (d) => d.dxMm);
  const dy = Float64Array.from(some, (d) => d.dyMm);
  const vx = Float64Array.from(some, (d) => d.varianceX);
  const vy = Float64Array.from(some, (d) => d.varianceY);
  const freedom = 2 * (some.length - trendTerms);
  let best: KrigingScale = { lengthMm: diagonalMm * 0.6, variance: 0, noiseFactor: 1 };
  if (some.length < 8) return best;
  let bestLikelihood = Number.NEGATIVE_INFINITY;
  for (const lengthMm of lengths) {
    const correlation = correlationsBetween(places, lengthMm);
    let fallingFor = 0;
    let bestHere = Number.NEGATIVE_INFINITY;
    for (const ratio of varianceRatios) {
      const x = solveAxis(places, middle, dx, vx, correlation, ratio * typical);
      const y = solveAxis(places, middle, dy, vy, correlation, ratio * typical);
      if (!x || !y) continue;
      const noiseFactor = (x.misfit + y.misfit) / freedom;
      const likelihood = -0.5 * (freedom * Math.log(noiseFactor) + x.logDeterminants + y.logDeterminants);
      if (likelihood > bestLikelihood) {
        bestLikelihood = likelihood;
        best = { lengthMm, variance: ratio * typical * noiseFactor, noiseFactor };
      }
      if (likelihood < bestHere) fallingFor++;
      bestHere = Math.max(bestHere, likelihood);
      if (fallingFor >= 2) break;
    }
  }
  return best;
}

/**
 * Universal kriging of displacements with a straight part and a Matérn 5/2 remainder (Matheron 1969; formulas as in
 * Rasmussen & Williams 2006, section 2.7). Beyond the data it goes back to the straight part, with honest errors.
 * @returns null for fewer than 4 displacements or a position that leaves the straight part open.
 */
export function fitStretch(displacements: readonly Displacement[], scale: KrigingScale): StretchFit | null {
  if (displacements.length < 4) return null;
  const places = displacements.map((d) => d.stoneMm);
  const middle = middleOf(places);
  const n = places.length;
  const correlation = correlationsBetween(places, scale.lengthMm);
  const axis = (value: (d: Displacement) => number, variance: (d: Displacement) => number): Axis | null =>
    solveAxis(
      places,
      middle,
      Float64Array.from(displacements, value),
      Float64Array.from(displacements, (d) => variance(d) * scale.noiseFactor),
      correlation,
      scale.variance,
    );
  const x = axis(
    (d) => d.dxMm,
    (d) => d.varianceX,
  );
  const y = axis(
    (d) => d.dyMm,
    (d) => d.varianceY,
  );
  if (!x || !y) return null;
  const toAll = (place: Point): Float64Array =>
    Float64Array.from(places, (other) => scale.variance * correlationBetween(place, other, scale.lengthMm));
  const sdOf = (solved: Axis, cross: Float64Array, row: readonly number[]): number => {
    const lowered = cross.slice();
    solveLower(solved.factor, n, lowered);
    let variance = scale.variance;
    const gap = Float64Array.from(row);
    for (let i = 0; i < n; i++) {
      variance -= lowered[i]! ** 2;
      for (let term = 0; term < trendTerms; term++) gap[term]! -= solved.trendLower[term]![i]! * lowered[i]!;
    }
    solveLower(solved.trendFactor, trendTerms, gap);
    for (const part of gap) variance += part * part;
    return Math.sqrt(Math.max(0, variance));
  };
  const leftOutOf = (solved: Axis): Float64Array => {
    const diagonal = inverseDiagonal(solved.factor, n);
    const projected = solved.trendLower.map((column) => {
      const copy = column.slice();
      solveUpper(solved.factor, n, copy);
      return copy;
    });
    const row = new Float64Array(trendTerms);
    for (let i = 0; i < n; i++) {
      for (let term = 0; term < trendTerms; term++) row[term] = projected[term]![i]!;
      solveLower(solved.trendFactor, trendTerms, row);
      for (const part of row) diagonal[i]! -= part * part;
    }
    return solved.dual.map((value, i) => value / Math.sqrt(Math.max(diagonal[i]!, 1e-30)));
  };
  return {
    scale,
    displacements,
    at(place) {
      const row = trendRow(place, middle);
      let dx = 0;
      let dy = 0;
      for (let i = 0; i < n; i++) {
        const other = places[i]!;
        const shared = correlationBetween(place, other, scale.lengthMm);
        dx += shared * x.dual[i]!;
        dy += shared * y.dual[i]!;
      }
      dx *= scale.variance;
      dy *= scale.variance;
      for (let term = 0; term < trendTerms; term++) {
        dx += row[term]! * x.beta[term]!;
        dy += row[term]! * y.beta[term]!;
      }
      return { dx, dy };
    },
    sdAt(place) {
      const cross = toAll(place);
      const row = trendRow(place, middle);
      return { x: sdOf(x, cross, row), y: sdOf(y, cross, row) };
    },
    leftOut: () => ({ x: leftOutOf(x), y: leftOutOf(y) }),
  };
}

/**
 * Fits, puts aside displacements that the others contradict by more than `limit` standard deviations, and fits again.
 * The scale is chosen once more after the first clearing when `scale` is not given.
 */
export function fitStretchRobustly(
  displacements: readonly Displacement[],
  diagonalMm: number,
  scale: KrigingScale | null,
  limit = 3.5,
): StretchFit | null {
  let kept = displacements;
  let chosen = scale ?? chooseKrigingScale(kept, diagonalMm);
  let fit = fitStretch(kept, chosen);
  for (let round = 0; round < 4 && fit; round++) {
    const { x, y } = fit.leftOut();
    const size = x.map((value, i) => Math.max(Math.abs(value), Math.abs(y[i]!)));
    const middling = [...size].sort((a, b) => a - b)[size.length >> 1]!;
    // The median of the larger of two standard normal magnitudes is 1.05; wild tiles must not widen the gate.
    const gate = limit * Math.min(1, middling / 1.05 + 0.05);
    const next = kept.filter((_, i) => size[i]! <= gate);
    if (next.length === kept.length || next.length < 8) break;
    const few = kept.length - next.length < 0.01 * kept.length;
    kept = next;
    if (!scale) chosen = chooseKrigingScale(kept, diagonalMm, [chosen.lengthMm]);
    fit = fitStretch(kept, chosen);
    if (few) break;
  }
  return fit;
}
