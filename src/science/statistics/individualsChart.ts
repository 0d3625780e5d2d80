/**
 * Factors for ranges of two neighbours, as printed with three decimals (Montgomery, Introduction to Statistical Quality
 * Control, Appendix VI, n = 2): mean range in standard deviations, and the upper limit of a range in mean ranges.
 */
export const rangeOfTwo = { d2: 1.128, D4: 3.267 };

/** Limits of single values and of the range between neighbours. */
export interface IndividualsChart {
  readonly mean: number;
  /** Standard deviation from the mean moving range: drift between far values doesn't widen it. */
  readonly deviation: number;
  readonly lower: number;
  readonly upper: number;
  readonly movingRanges: readonly number[];
  readonly meanRange: number;
  readonly upperRange: number;
}

/**
 * Chart of individuals and moving ranges with limits at three standard deviations, as NIST/SEMATECH e-Handbook 6.3.2.2.
 * @param values in order, at least two.
 * @returns null for fewer.
 */
export function individualsChart(values: readonly number[]): IndividualsChart | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const meanRange = movingRanges.reduce((sum, range) => sum + range, 0) / movingRanges.length;
  const deviation = meanRange / rangeOfTwo.d2;
  return {
    mean,
    deviation,
    lower: mean - 3 * deviation,
    upper: mean + 3 * deviation,
    movingRanges,
    meanRange,
    upperRange: rangeOfTwo.D4 * meanRange,
  };
}
