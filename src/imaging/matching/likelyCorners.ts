import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import type { SheetOutline } from './sheetOutline.ts';
import { guessesFromSheet } from './suggestCorners.ts';

/** The share of a sheet's width that a drawing mostly fills, as one of five between all and two thirds. Our rule. */
const middleFilling = 2;
const fillings = 5;

/**
 * Where the work rectangle most likely lies on a print: centred on its sheet, lying as the picture does.
 * `alike`: whether it then lies along the photograph as the stone's rectangle does.
 */
export function likelyCorners(
  print: Photograph,
  outline: SheetOutline | null,
  sizeMm: Point,
): { readonly corners: Corners; readonly alike: boolean } {
  const guesses = guessesFromSheet(print, outline, sizeMm);
  const alike = print.widthPx > print.heightPx === sizeMm[0] > sizeMm[1];
  return { corners: guesses[(alike ? 0 : fillings) + middleFilling]!, alike };
}
