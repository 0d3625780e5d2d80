import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import { sheetOutline } from './sheetOutline.ts';
import { guessesFromSheet } from './suggestCorners.ts';

/** The share of a sheet's width that a drawing mostly fills, as one of five between all and two thirds. Our rule. */
const middleFilling = 2;
const fillings = 5;

/** Where the work rectangle most likely lies on a print: centred on its sheet, lying as the picture does. */
export function likelyCorners(print: Photograph, sizeMm: Point): Corners {
  const guesses = guessesFromSheet(print, sheetOutline(print), sizeMm);
  const alike = print.widthPx > print.heightPx === sizeMm[0] > sizeMm[1];
  return guesses[(alike ? 0 : fillings) + middleFilling]!;
}
