/**
 * Which findings to keep so that of those kept only the share `rate` is expected to be false, by the step-up rule of
 * Benjamini, Y. & Hochberg, Y. (1995), J. Royal Statistical Society B 57, 289–300, doi 10.1111/j.2517-6161.1995.tb02031.x.
 * @param probabilities each 0..1: how likely a finding at least as strong is where there is nothing. NaN: not tested.
 * @param rate 0..1, such as 0.05.
 * @returns the largest probability that is kept; −1 where none is.
 */
export function discoveryLimit(probabilities: readonly number[], rate: number): number {
  const tested = probabilities.filter((probability) => !Number.isNaN(probability)).sort((a, b) => a - b);
  let limit = -1;
  for (const [index, probability] of tested.entries()) {
    if (probability <= (rate * (index + 1)) / tested.length) limit = probability;
  }
  return limit;
}
