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
  const sorted = kept.subarray(0, count).sort();
  if (sorted.length === 0) return Number.NaN;
  const at = (sorted.length - 1) * share;
  const below = Math.floor(at);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below]! + (at - below) * (sorted[above]! - sorted[below]!);
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
