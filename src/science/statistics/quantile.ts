/**
 * Quantile by linear interpolation between order statistics, type 7 of Hyndman & Fan 1996 (doi 10.1080/00031305.1996.10473566).
 * @param values in any order; NaN are left out.
 * @param share 0..1.
 * @returns NaN for no values.
 */
export function quantile(values: ArrayLike<number>, share: number): number {
  const kept = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) if (!Number.isNaN(values[i]!)) kept[count++] = values[i]!;
  if (count === 0) return Number.NaN;
  const at = (count - 1) * share;
  const rank = Math.floor(at);
  const below = selectRank(kept, count, rank);
  if (rank === count - 1) return below;
  // what lies behind the rank is not smaller: its least value is the next one in order
  let above = Number.POSITIVE_INFINITY;
  for (let i = rank + 1; i < count; i++) if (kept[i]! < above) above = kept[i]!;
  return below + (at - rank) * (above - below);
}

/**
 * The value that would stand at `rank` in order (Hoare 1961, Algorithm 65, doi 10.1145/366622.366647): far less work than
 * sorting where only one is wanted. Reorders the first `count` of `values` so that none behind the rank is smaller.
 */
function selectRank(values: Float64Array, count: number, rank: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const pivot = middleOfThree(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let left = low;
    let right = high;
    while (left <= right) {
      while (values[left]! < pivot) left++;
      while (values[right]! > pivot) right--;
      if (left > right) break;
      const moved = values[left]!;
      values[left++] = values[right]!;
      values[right--] = moved;
    }
    if (rank <= right) high = right;
    else if (rank >= left) low = left;
    else break;
  }
  return values[rank]!;
}

function middleOfThree(a: number, b: number, c: number): number {
  return a < b ? (b < c ? b : Math.max(a, c)) : a < c ? a : Math.max(b, c);
}

/** Median; NaN for no values. */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}

/** 1 / Φ⁻¹(3/4): turns a median absolute deviation into a standard deviation of a normal distribution. */
export const madFactor = 1.4826022185056018;

/** Median absolute deviation from the median, times 1.4826 (Hampel 1974, doi 10.1080/01621459.1974.10482962); NaN for no values. */
export function medianAbsoluteDeviation(values: ArrayLike<number>): number {
  const centre = median(values);
  return madFactor * median(Float64Array.from(values, (value) => Math.abs(value - centre)));
}
