import type { SheetMm } from '../../records/edition.ts';

/** Mass of a sheet, g: grammage (g/m², ISO 536) times its area. */
export function sheetGrams([widthMm, heightMm]: SheetMm, gramsPerM2: number): number {
  return (widthMm * heightMm * gramsPerM2) / 1e6;
}

/** Grammage of a weighed sheet, g/m². */
export function grammageOf([widthMm, heightMm]: SheetMm, grams: number): number {
  return grams / ((widthMm * heightMm) / 1e6);
}
