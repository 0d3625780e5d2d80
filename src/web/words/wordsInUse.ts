import type { WordChoice } from './wordChoice.ts';

/** What every word, length and day of this page is written by. */
export interface WordsInUse extends WordChoice {
  /** English sentence → the same in the page's language; empty in English, whose sentences are their own keys. */
  readonly sentences: Readonly<Record<string, string>>;
  /** What is told in English from outside the screens → the page's language; some with places in them. */
  readonly told?: Readonly<Record<string, string>>;
}

const english: WordsInUse = { language: 'en', units: 'metric', dates: 'en-GB', sentences: {} };

let inUse = english;

/** What the page is written by: set before its first screen is loaded, and the same from then on. */
export function wordsInUse(): WordsInUse {
  return inUse;
}

/** Sets what the page is written by. Called once, before any screen is loaded; a new choice loads the page anew. */
export function setWordsInUse(words: WordsInUse): void {
  inUse = words;
}
