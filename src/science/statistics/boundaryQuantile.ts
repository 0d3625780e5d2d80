import { betaBelow } from './betaDistribution.ts';
import { normalUpperTail } from './normalTail.ts';

/**
 * Half-width, in standard errors, of a likelihood interval where a second parameter may lie on the edge of what it can be:
 * the square is then as often a chi-square with one degree of freedom as one with two, and the quantile of that mixture holds
 * the level both there and away from the edge (Self & Liang 1987, J. American Statistical Association 82, 605–610; reference
 * from memory).
 * @param level two-sided, 0..1 without the ends, such as 0.9; NaN otherwise.
 * @param degreesOfFreedom of the variance; Infinity where it is known. Above 0; NaN otherwise.
 */
export function boundaryQuantile(level: number, degreesOfFreedom: number): number {
  if (!(level > 0 && level < 1 && degreesOfFreedom > 0)) return Number.NaN;
  let low = 0;
  let high = 1;
  while (beyond(high, degreesOfFreedom) > 1 - level) high *= 2;
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (beyond(middle, degreesOfFreedom) > 1 - level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Chance that one of the two lies beyond `width`. */
function beyond(width: number, freedom: number): number {
  const square = width * width;
  if (freedom === Infinity) return normalUpperTail(width) + 0.5 * Math.exp(-0.5 * square);
  const one = betaBelow(freedom / (freedom + square), freedom / 2, 0.5);
  const two = (1 + square / freedom) ** (-freedom / 2);
  return 0.5 * (one + two);
}
