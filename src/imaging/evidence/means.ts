/** Arithmetic mean; NaN for none. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** How many neighbouring cells of the maps err together: our rule. */
const togetherCells = 6;

/** Standard deviation of a mean of cells that err together with their neighbours, in the values' unit. */
export function standardError(values: readonly number[]): number {
  const middle = mean(values);
  const variance =
    values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / Math.max(1, values.length - 1);
  return Math.sqrt((variance * togetherCells) / values.length);
}
