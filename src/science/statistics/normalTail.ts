/**
 * Chance that a standard normal variable exceeds `score`: Mills' ratio by its continued fraction (Abramowitz & Stegun 1964,
 * 26.2.14) from 3 upwards, the power series of the integral from 0 (26.2.11) below; to about 14 digits throughout.
 * @param score any number; NaN for NaN.
 */
export function normalUpperTail(score: number): number {
  if (score < 0) return 1 - normalUpperTail(-score);
  const density = Math.exp(-0.5 * score * score) / Math.sqrt(2 * Math.PI);
  if (score < 3) {
    let term = score;
    let sum = score;
    for (let odd = 3; term > sum * 1e-17; odd += 2) {
      term *= (score * score) / odd;
      sum += term;
    }
    return 0.5 - density * sum;
  }
  let fraction = score;
  for (let level = 60; level >= 1; level--) fraction = score + level / fraction;
  return density / fraction;
}
