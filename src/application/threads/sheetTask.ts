import type { WordChoice } from '../../records/wordChoice.ts';
import { wordsAskedFor } from './wordsAskedFor.ts';

/** What a thread that sets a sheet is given. */
export interface SheetTask<Input> {
  readonly input: Input;
  readonly words: WordChoice;
}

/** A sheet to set in the words that are asked for now. */
export function sheetTask<Input>(input: Input): SheetTask<Input> {
  return { input, words: wordsAskedFor() };
}
