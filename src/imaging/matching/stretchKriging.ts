import type { Point } from '../../science/geometry/point.ts';
import { inverseDiagonal, solveLower, solveUpper } from './choleskySolve.ts';
import type { Displacement } from './displacement.ts';
import { type Axis, middleOf, solveAxis, trendRow, trendTerms } from './krigingAxis.ts';
import { chooseKrigingScale, type KrigingScale } from './krigingScale.ts';
import { correlationBetween, correlationsBetween } from './maternCorrelation.ts';

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
