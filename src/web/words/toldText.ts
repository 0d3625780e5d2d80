import { textInWords } from '../../words/inWords.ts';

/**
 * What the server tells in several parts (a sentence with moments, a list, a length of time), in the page's words, units
 * and days. What nobody translated stays as it was told.
 */
export const toldText: (english: string) => string = textInWords;
