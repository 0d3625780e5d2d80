import { logGamma } from './logGamma.ts';

/**
 * Chance that a gamma variable of scale 1 lies above `x`: the regularised incomplete gamma function by its series below the
 * mean and its continued fraction above (Abramowitz & Stegun 1964, 6.5.29 and 6.5.31), to about 12 digits.
 * @param x 0 or more.
 * @param shape above 0.
 */
export function gammaAbove(x: number, shape: number): number {
  if (x <= 0) return 1;
  const front = Math.exp(shape * Math.log(x) - x - logGamma(shape));
  if (x < shape + 1) {
    let term = 1 / shape;
    let sum = term;
    for (let k = 1; term > sum * 1e-17; k++) {
      term *= x / (shape + k);
      sum += term;
    }
    return 1 - front * sum;
  }
  // From the front, as Lentz 1976 (doi 10.1364/AO.15.000668) does.
  let bottom = x + 1 - shape;
  let numerator = 1e300;
  let denominator = 1 / bottom;
  let fraction = denominator;
  for (let k = 1; k < 10_000; k++) {
    const part = k * (shape - k);
    bottom += 2;
    denominator = 1 / (bottom + part * denominator);
    numerator = bottom + part / numerator;
    const factor = numerator * denominator;
    fraction *= factor;
    if (Math.abs(factor - 1) < 1e-16) break;
  }
  return front * fraction;
}
