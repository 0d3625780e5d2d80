import type { Random } from '../../../foundation/random.ts';

/** The items in an order drawn by lot. Fisher and Yates' shuffle. */
export function shuffled<Item>(items: readonly Item[], random: Random): Item[] {
  const drawn = [...items];
  for (let last = drawn.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [drawn[last], drawn[other]] = [drawn[other]!, drawn[last]!];
  }
  return drawn;
}
