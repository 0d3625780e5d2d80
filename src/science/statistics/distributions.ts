import betaQuantileOf from '@stdlib/stats-base-dists-beta-quantile';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import studentQuantileOf from '@stdlib/stats-base-dists-t-quantile';

/** Quantile of the standard normal distribution; NaN for a probability outside 0..1. */
export function normalQuantile(probability: number): number {
  return normalQuantileOf(probability, 0, 1);
}

/**
 * Quantile of Student's t distribution.
 * @param probability cumulative, 0..1; NaN outside.
 * @param degreesOfFreedom above 0, need not be whole; infinity gives the normal distribution; NaN at 0 and below.
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalQuantile(probability);
  return studentQuantileOf(probability, degreesOfFreedom);
}

/** Quantile of the beta distribution with both shapes above 0; NaN for a probability outside 0..1 or shapes at 0 and below. */
export function betaQuantile(probability: number, alpha: number, beta: number): number {
  return betaQuantileOf(probability, alpha, beta);
}
