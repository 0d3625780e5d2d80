import { discoveryLimit } from '../../science/statistics/falseDiscovery.ts';
import { normalUpperTail } from '../../science/statistics/normalTail.ts';

/**
 * Which places pass their limit beyond doubt, false discoveries held to a rate, over one-sided normal scores.
 * @param scores excess over its standard deviation, NaN where nothing was read.
 * @param passes 1 where the place passes at all; only those can be chosen, all read places count as tested.
 * @param rate false discovery rate, 0..1.
 */
export function significantPlaces(scores: Float32Array, passes: Uint8Array, rate: number): Uint8Array {
  const chances = new Float64Array(scores.length).fill(1);
  const candidates: number[] = [];
  let tested = 0;
  for (let i = 0; i < scores.length; i++) {
    if (Number.isNaN(scores[i]!)) continue;
    tested++;
    if (!passes[i]) continue;
    chances[i] = normalUpperTail(scores[i]!);
    candidates.push(chances[i]!);
  }
  const limit = discoveryLimit(candidates, tested, rate);
  return Uint8Array.from(passes, (passed, i) => (passed && chances[i]! <= limit ? 1 : 0));
}
