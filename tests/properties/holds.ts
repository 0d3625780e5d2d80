import fc from 'fast-check';
import { expect, test } from 'vitest';

/**
 * The seed of every random test of this folder: the same at each run, so that a red test is red for everybody;
 * `PROPERTY_SEED=random` draws a new one, `PROPERTY_SEED=123` takes that one.
 */
export const seed = seedOf(process.env.PROPERTY_SEED);

/** A busy machine may take long over many cases; a property that hangs must end all the same. */
const longestSeconds = 120;

/**
 * One test: the property holds for `runs` random cases. A case that breaks it is shrunk to the smallest that does;
 * the failure names it with the seed and the path that lead back to it.
 */
export function holds<T>(title: string, property: fc.IProperty<T> | fc.IAsyncProperty<T>, runs = 200): void {
  test(`${title} (seed ${seed})`, { timeout: longestSeconds * 1000 }, () =>
    fc.assert(property as fc.IProperty<T>, { seed, numRuns: runs }),
  );
}

/** Apart by no more than a share of the larger, or of 1. */
export function close(a: number, b: number, share = 1e-9): void {
  expect(Math.abs(a - b), `${a} and ${b}`).toBeLessThanOrEqual(share * Math.max(1, Math.abs(a), Math.abs(b)));
}

function seedOf(wanted: string | undefined): number {
  if (wanted === 'random') return Date.now() % 2 ** 31;
  const typed = Number(wanted ?? 20_261_125);
  if (!Number.isInteger(typed)) throw new Error(`PROPERTY_SEED is a whole number or "random", not ${wanted}`);
  return typed;
}
