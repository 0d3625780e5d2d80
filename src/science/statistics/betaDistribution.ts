import { logGamma } from './logGamma.ts';

/**
 * Chance that a beta variable lies below `x`: the regularised incomplete beta function by its continued fraction
 * (Abramowitz & Stegun 1964, 26.5.8), evaluated from the front as Lentz 1976 (doi 10.1364/AO.15.000668) does.
 * @param x 0..1.
 * @param alpha above 0. @param beta above 0.
 */
export function betaBelow(x: number, alpha: number, beta: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction is quick on this side of the mean only.
  if (x > (alpha + 1) / (alpha + beta + 2)) return 1 - betaBelow(1 - x, beta, alpha);
  const logFront =
    logGamma(alpha + beta) -
    logGamma(alpha) -
    logGamma(beta) +
    alpha * Math.log(x) +
    beta * Math.log1p(-x) -
    Math.log(alpha);
  let numerator = 1;
  let denominator = 1 / (1 - ((alpha + beta) * x) / (alpha + 1));
  let fraction = denominator;
  for (let m = 1; m < 1000; m++) {
    const even = (m * (beta - m) * x) / ((alpha + 2 * m - 1) * (alpha + 2 * m));
    denominator = 1 / (1 + even * denominator);
    numerator = 1 + even / numerator;
    fraction *= numerator * denominator;
    const odd = (-(alpha + m) * (alpha + beta + m) * x) / ((alpha + 2 * m) * (alpha + 2 * m + 1));
    denominator = 1 / (1 + odd * denominator);
    numerator = 1 + odd / numerator;
    const factor = numerator * denominator;
    fraction *= factor;
    if (Math.abs(factor - 1) < 1e-16) break;
  }
  return Math.exp(logFront) * fraction;
}
