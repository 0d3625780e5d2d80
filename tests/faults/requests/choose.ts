import type { Random } from '../../../src/foundation/random.ts';

/** A whole number, `least` to `most`, both reached. */
export function wholeBetween(random: Random, least: number, most: number): number {
  return least + Math.floor(random() * (most - least + 1));
}

/** One of a list that is not empty. */
export function oneOf<T>(random: Random, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)]!;
}
