/**
 * Isotonic regression by pooling adjacent violators (Barlow, Bartholomew, Bremner & Brunk 1972): the rising sequence
 * nearest to the values in weighted least squares.
 * @param values in order of the abscissa.
 * @param weights above 0, one per value; null: all 1.
 */
export function isotonic(values: readonly number[], weights: readonly number[] | null): number[] {
  const blocks: { sum: number; weight: number; count: number }[] = [];
  for (const [i, value] of values.entries()) {
    const weight = weights ? weights[i]! : 1;
    let block = { sum: value * weight, weight, count: 1 };
    for (
      let last = blocks.at(-1);
      last && last.sum / last.weight >= block.sum / block.weight;
      last = blocks.at(-1)
    ) {
      blocks.pop();
      block = {
        sum: last.sum + block.sum,
        weight: last.weight + block.weight,
        count: last.count + block.count,
      };
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) => Array.from({ length: block.count }, () => block.sum / block.weight));
}
