import { median } from './quantile.ts';

/**
 * The line whose slope is the median of the slopes between all pairs of points, so that up to 29 % of wild points do not
 * turn it. Theil, H. (1950), Indagationes Mathematicae 12; Sen, P. K. (1968), J. American Statistical Association 63,
 * 1379–1389, doi 10.1080/01621459.1968.10480934.
 * The intercept is the median of y − slope·x. Another convention, median y − slope·median x, gives another number.
 * @param x abscissae; pairs of equal ones are left out.
 * @param y one per abscissa.
 * @returns NaN where no two abscissae differ.
 */
export function theilSen(x: readonly number[], y: readonly number[]): { slope: number; intercept: number } {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      if (x[i] !== x[j]) slopes.push((y[j]! - y[i]!) / (x[j]! - x[i]!));
    }
  }
  const slope = median(slopes);
  return { slope, intercept: median(x.map((at, i) => y[i]! - slope * at)) };
}
