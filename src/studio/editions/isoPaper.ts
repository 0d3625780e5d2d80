import type { SheetMm } from '../../records/edition.ts';

/** A0 and B0, mm: ISO 216. */
const largest: Readonly<Record<'A' | 'B', SheetMm>> = { A: [841, 1189], B: [1000, 1414] };

/**
 * Trimmed size of an ISO sheet, upright, mm: each is the larger one halved across, fractions dropped. ISO 216.
 * @param n 0..10.
 */
export function isoSheetMm(series: 'A' | 'B', n: number): SheetMm {
  let [width, height] = largest[series];
  for (let step = 0; step < n; step++) [width, height] = [Math.floor(height / 2), width];
  return [width, height];
}

/** By how much a trimmed side may be off either way, mm: ISO 216, up to 150, up to 600, above. */
export function isoToleranceMm(sideMm: number): number {
  return sideMm <= 150 ? 1.5 : sideMm <= 600 ? 2 : 3;
}
