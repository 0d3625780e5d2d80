/**
 * Which places pass their limit beyond doubt, false discoveries held to a rate (Benjamini & Hochberg 1995,
 * doi 10.1111/j.2517-6161.1995.tb02031.x), over one-sided normal scores.
 * @param scores excess over its standard deviation, NaN where nothing was read.
 * @param passes 1 where the place passes at all; only those can be chosen, all read places count as tested.
 * @param rate false discovery rate, 0..1.
 */
export function significantPlaces(scores: Float32Array, passes: Uint8Array, rate: number): Uint8Array {
  const candidates: number[] = [];
  let tested = 0;
  for (let i = 0; i < scores.length; i++) {
    if (Number.isNaN(scores[i]!)) continue;
    tested++;
    if (passes[i]) candidates.push(scores[i]!);
  }
  candidates.sort((a, b) => b - a);
  let least = Number.POSITIVE_INFINITY;
  for (const [index, score] of candidates.entries()) {
    if (upperTail(score) <= (rate * (index + 1)) / tested) least = score;
  }
  return Uint8Array.from(scores, (score, i) => (passes[i] && score >= least ? 1 : 0));
}

/** Upper tail of the standard normal distribution (Abramowitz & Stegun 1964, 26.2.17, error below 7.5e-8). */
function upperTail(score: number): number {
  if (score < 0) return 1 - upperTail(-score);
  const t = 1 / (1 + 0.2316419 * score);
  const poly =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return (Math.exp(-0.5 * score * score) / Math.sqrt(2 * Math.PI)) * poly;
}
