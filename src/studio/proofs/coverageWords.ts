import type { CoverageInterval } from '../../records/comparison.ts';

/** A figure and its spread as written on screens and sheets, in per cent without the sign. */
export interface CoverageFigure {
  readonly value: string;
  /** Such as `±2`; the larger arm of the 95 % interval, never rounded down to nothing. */
  readonly plusMinus: string;
}

/**
 * Writes a coverage 0..1 with its interval as per cent. Whole per cents unless the interval is
 * narrower than ±1 %, then one decimal. Null stays null: nothing is written in place of a figure.
 */
export function coverageFigure(interval: CoverageInterval | null): CoverageFigure | null {
  if (interval === null) return null;
  const arm = 100 * Math.max(interval.high - interval.coverage, interval.coverage - interval.low, 0);
  const decimals = arm < 1 ? 1 : 0;
  const value = positiveZero((100 * interval.coverage).toFixed(decimals));
  return { value, plusMinus: `±${Math.max(arm, 0.1).toFixed(decimals)}` };
}

/** Writes a fraction 0..1 as `12 %`, `0.4 %` or `under 0.1 %`; exactly none is `0 %`. */
export function shareWords(fraction: number): string {
  const percent = 100 * fraction;
  if (percent <= 0) return '0 %';
  if (percent < 0.1) return 'under 0.1 %';
  return `${percent.toFixed(percent < 9.95 ? 1 : 0).replace(/\.0$/, '')} %`;
}

function positiveZero(text: string): string {
  return /^-0(\.0)?$/.test(text) ? text.slice(1) : text;
}
