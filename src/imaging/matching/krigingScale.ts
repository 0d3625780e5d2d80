import type { Displacement } from './displacement.ts';
import { middleOf, solveAxis, trendTerms } from './krigingAxis.ts';
import { correlationsBetween } from './maternCorrelation.ts';

/** How far tiles speak for their neighbours, and how much their own variances are to be believed. */
export interface KrigingScale {
  /** Length of the Matérn 5/2 covariance, mm. */
  readonly lengthMm: number;
  /** Variance of the stretch about its straight part, mm². */
  readonly variance: number;
  /** True variance of a tile over its predicted one. */
  readonly noiseFactor: number;
}

/** Lengths tried, as shares of the work rectangle's diagonal, and stretch variances over the median tile variance. */
const lengthShares = [0.12, 0.2, 0.35, 0.6, 1.1];
const varianceRatios = [0.1, 1, 10, 100, 1000, 10000];

/** Most displacements used to judge length and variance; the fit itself uses all. */
const mostForLikelihood = 130;

/**
 * Chooses length, variance and noise factor by restricted maximum likelihood over a small grid, the noise factor in closed
 * form (Patterson & Thompson 1971, doi 10.1093/biomet/58.3.545). Both axes share them.
 * @param diagonalMm of the work rectangle. @param lengths the ones tried, mm.
 * @returns with fewer than 8 displacements no stretch but the straight part.
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
