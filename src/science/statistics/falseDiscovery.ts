/**
 * How likely a finding may be by chance and still be kept, so that of all that is kept only the share `rate` is expected
 * to be false. Step-up rule of Benjamini, Y. & Hochberg, Y. (1995), J. Royal Statistical Society B 57, 289–300,
 * doi 10.1111/j.2517-6161.1995.tb02031.x.
 * @param probabilities of the candidates, each 0..1: how likely a finding at least as strong is where there is nothing.
 * @param tested how many were tested in all, the candidates among them.
 * @param rate 0..1, such as 0.05.
 * @returns the largest probability that is kept; −1 where none is.
 */
export function discoveryLimit(probabilities: ArrayLike<number>, tested: number, rate: number): number {
  const sorted = Float64Array.from(probabilities).sort();
  for (let rank = sorted.length; rank >= 1; rank--) {
    if (sorted[rank - 1]! <= (rate * rank) / tested) return sorted[rank - 1]!;
  }
  return -1;
}
