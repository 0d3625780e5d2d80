import type { CoverageInterval } from '../../records/comparison.ts';
import { shareWords } from '../../studio/proofs/coverageWords.ts';
import { figureText } from '../words/figures.ts';

/** A share 0..1 as a large figure and its sign: `0.4` and `%`; `–` and nothing where it is not known. */
export function shareFigure(share: number | null): { value: string; beside: string } {
  if (share === null) return { value: '–', beside: '' };
  return { value: figureText(shareWords(share).replace('under ', '<').replace(' %', '')), beside: '%' };
}

/**
 * A coverage in whole per cents and the longer arm of its 95 % interval, apart: `24` and `± 2`.
 * The arm is rounded up and never under 1, so that no reading claims to be exact; null where nothing is known.
 */
export function coverageParts(reading: CoverageInterval | null): { value: string; plusMinus: string } | null {
  if (reading === null) return null;
  const { coverage, low, high } = reading;
  const arm = 100 * Math.max(high - coverage, coverage - low);
  return {
    value: String(Math.round(100 * coverage) + 0),
    plusMinus: `± ${Math.max(1, Math.ceil(arm - 1e-6))}`,
  };
}
