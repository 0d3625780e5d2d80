import type { ComparisonWarning, GroundRecord } from '../../records/comparison.ts';
import type { Mask } from '../raster.ts';

/**
 * What of the drawing lies off the sheet, and whether the print's ground could be told from scum.
 * @param partial a noticeable part is off the sheet.
 * @param printGround null where the print could not be read.
 */
export function sheetWarnings(
  covered: Mask,
  partial: boolean,
  printGround: GroundRecord | null,
): ComparisonWarning[] {
  const found: ComparisonWarning[] = [];
  if (partial) {
    const share = Math.round((1 - coveredShare(covered)) * 100);
    found.push({
      code: 'partial',
      message: `The sheet does not cover the whole drawing (${share} % is missing): what lies off the sheet is not measured.`,
    });
  }
  if (printGround?.limit) found.push({ code: 'scum-local-only', message: printGround.limit });
  return found;
}

/** Share of the work rectangle that the sheet covers, 0..1. */
export function coveredShare(covered: Mask): number {
  let count = 0;
  for (const value of covered.data) if (value) count++;
  return covered.data.length === 0 ? 0 : count / covered.data.length;
}
