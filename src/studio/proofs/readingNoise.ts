import { chiSquareQuantile } from '../../science/statistics/distributions.ts';

/** σ of one reading with its 95 % interval, and from how many differences it comes. */
export interface ReadingNoise {
  readonly sigma: number;
  readonly low: number;
  readonly high: number;
  readonly degreesOfFreedom: number;
}

/**
 * The standard deviation of one reading, from things read more than once, each time set up anew: their scatter about their
 * own means, pooled.
 * @param readings one list per tone and sheet; a list of one reading tells nothing and is passed over.
 * @returns null where nothing was read twice.
 */
export function readingNoise(readings: readonly (readonly number[])[]): ReadingNoise | null {
  const repeated = readings.filter(({ length }) => length > 1);
  if (repeated.length === 0) return null;
  const degreesOfFreedom = repeated.reduce((sum, { length }) => sum + length - 1, 0);
  const squares = repeated.reduce((sum, values) => {
    const mean = values.reduce((total, value) => total + value, 0) / values.length;
    return sum + values.reduce((total, value) => total + (value - mean) ** 2, 0);
  }, 0);
  const bound = (chance: number) => Math.sqrt(squares / chiSquareQuantile(chance, degreesOfFreedom));
  return {
    sigma: Math.sqrt(squares / degreesOfFreedom),
    low: bound(0.975),
    high: bound(0.025),
    degreesOfFreedom,
  };
}
