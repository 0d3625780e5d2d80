import { betaBelow } from './betaDistribution.ts';
import { gammaAbove } from './gammaDistribution.ts';
import { normalUpperTail } from './normalTail.ts';

/**
 * Quantile of the standard normal distribution, to about 14 digits: where `normalUpperTail` passes it. Here as below the
 * chance has its own source, the quantile is found by halving, and how the distributions hang together is told in
 * Abramowitz & Stegun 1964, chapter 26 (from memory).
 * @param probability 0..1; 0 and 1 give ∓∞, anything else outside NaN.
 */
export function normalQuantile(probability: number): number {
  if (!(probability >= 0 && probability <= 1)) return Number.NaN;
  if (probability === 0 || probability === 1) return probability === 0 ? -Infinity : Infinity;
  if (probability > 0.5) return -normalQuantile(1 - probability);
  return -whereFalling((score) => normalUpperTail(score), probability, 0, 40);
}

/**
 * Quantile of Student's t distribution, by the beta distribution: t² / (t² + ν) is a beta variable.
 * @param probability 0..1; 0 and 1 give ∓∞, anything else outside NaN.
 * @param degreesOfFreedom above 0, Infinity for the normal distribution; NaN otherwise.
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability >= 0 && probability <= 1 && degreesOfFreedom > 0)) return Number.NaN;
  if (degreesOfFreedom === Infinity) return normalQuantile(probability);
  if (probability === 0 || probability === 1) return probability === 0 ? -Infinity : Infinity;
  if (probability < 0.5) return -studentQuantile(1 - probability, degreesOfFreedom);
  // t² / (t² + ν) is a beta variable; near the middle it is small itself, far out its complement is.
  const within = 2 * probability - 1;
  if (within < 0.5) {
    const share = betaQuantile(within, 0.5, degreesOfFreedom / 2);
    return Math.sqrt((degreesOfFreedom * share) / (1 - share));
  }
  const rest = betaQuantile(2 * (1 - probability), degreesOfFreedom / 2, 0.5);
  return Math.sqrt((degreesOfFreedom * (1 - rest)) / rest);
}

/**
 * Chance that Student's t exceeds a score: t² is Fisher's F with one degree of freedom above.
 * @param score 0 or more; NaN below.
 * @param degreesOfFreedom above 0, Infinity for the normal distribution; NaN otherwise.
 */
export function studentTail(score: number, degreesOfFreedom: number): number {
  return score >= 0 ? fisherAbove(score * score, 1, degreesOfFreedom) / 2 : Number.NaN;
}

/**
 * Quantile of the beta distribution.
 * @param probability 0..1; NaN otherwise.
 * @param alpha above 0. @param beta above 0; NaN otherwise.
 */
export function betaQuantile(probability: number, alpha: number, beta: number): number {
  if (!(probability >= 0 && probability <= 1 && alpha > 0 && beta > 0)) return Number.NaN;
  if (probability === 0 || probability === 1) return probability;
  return whereFalling((x) => -betaBelow(x, alpha, beta), -probability, 0, 1);
}

/**
 * Quantile of the chi-square distribution: its half is a gamma variable.
 * @param probability 0..1; 0 gives 0 and 1 Infinity, anything else outside NaN.
 * @param degreesOfFreedom above 0; NaN otherwise.
 */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability >= 0 && probability <= 1 && degreesOfFreedom > 0)) return Number.NaN;
  if (probability === 0 || probability === 1) return probability === 0 ? 0 : Infinity;
  const above = 1 - probability;
  let far = degreesOfFreedom + 10;
  while (gammaAbove(far / 2, degreesOfFreedom / 2) > above) far *= 2;
  return whereFalling((x) => gammaAbove(x / 2, degreesOfFreedom / 2), above, 0, far);
}

/**
 * Quantile of Fisher's F distribution, the ratio of two variances.
 * @param probability 0..1; 0 gives 0 and 1 Infinity, anything else outside NaN.
 * @param upper degrees of freedom of the variance above, above 0; NaN otherwise.
 * @param lower those of the variance below, above 0, Infinity where it is known; NaN otherwise.
 */
export function fisherQuantile(probability: number, upper: number, lower: number): number {
  if (!(probability >= 0 && probability <= 1 && upper > 0 && lower > 0)) return Number.NaN;
  if (probability === 0 || probability === 1) return probability === 0 ? 0 : Infinity;
  if (lower === Infinity) return chiSquareQuantile(probability, upper) / upper;
  // The upper sum's share of both is small near 0 and the lower one's far out: each keeps its digits where it is small.
  if (probability < 0.5) {
    const share = betaQuantile(probability, upper / 2, lower / 2);
    return (lower * share) / (upper * (1 - share));
  }
  const rest = betaQuantile(1 - probability, lower / 2, upper / 2);
  return (lower * (1 - rest)) / (upper * rest);
}

/**
 * Chance that a ratio of two variances exceeds `ratio`, by Fisher's F distribution.
 * @param ratio 0 or more; below gives 1, NaN gives NaN.
 * @param upper degrees of freedom of the variance above, above 0; NaN otherwise.
 * @param lower those of the variance below, above 0, Infinity where it is known; NaN otherwise.
 */
export function fisherAbove(ratio: number, upper: number, lower: number): number {
  if (!(upper > 0 && lower > 0) || Number.isNaN(ratio)) return Number.NaN;
  if (ratio <= 0) return 1;
  if (ratio === Infinity) return 0;
  if (lower === Infinity) return gammaAbove((ratio * upper) / 2, upper / 2);
  return betaBelow(lower / (lower + upper * ratio), lower / 2, upper / 2);
}

/** Where a falling function passes a level, by halving between two bounds down to neighbouring numbers. */
function whereFalling(fall: (at: number) => number, level: number, low: number, high: number): number {
  let left = low;
  let right = high;
  for (let middle = (left + right) / 2; middle > left && middle < right; middle = (left + right) / 2) {
    if (fall(middle) > level) left = middle;
    else right = middle;
  }
  return (left + right) / 2;
}
