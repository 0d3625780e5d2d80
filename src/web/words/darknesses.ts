import { darknessWords } from '../../studio/proofs/seriesWords.ts';
import { figureText } from './figures.ts';

/** A darkness with two decimals, or three where it has them, with the comma or point of the page's language. */
export function darknessText(darkness: number): string {
  return figureText(darknessWords(darkness));
}
