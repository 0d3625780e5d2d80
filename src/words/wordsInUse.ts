import { plainChoice, type WordChoice } from '../records/wordChoice.ts';

/** What every word, length and day of this page, or of this sheet, is written by. */
export interface WordsInUse extends WordChoice {
  /** English sentence → the same in the page's language; empty in English, whose sentences are their own keys. */
  readonly sentences: Readonly<Record<string, string>>;
  /** What is told in English from outside the screens → the page's language; some with places in them. */
  readonly told?: Readonly<Record<string, string>>;
  /** Hears of every line of a sheet that is not in `told` and stays English. For checks. */
  readonly missed?: (english: string, sentence: string) => void;
}

const english: WordsInUse = { ...plainChoice, sentences: {} };

let inUse = english;

/** What the page or sheet is written by: set before its first words are put together, and the same from then on. */
export function wordsInUse(): WordsInUse {
  return inUse;
}

/**
 * Sets what the page is written by: once, before any screen is loaded; a new choice loads the page anew. A sheet is set in a
 * thread of its own, which sets this first.
 */
export function setWordsInUse(words: WordsInUse): void {
  inUse = words;
}
