import { mediumCatalogue } from './mediumCatalogue.ts';

/** A medium as people call it, where it is written as files write it (`crayon-2`); every other word stays. */
export function mediumName(word: string): string {
  return mediumCatalogue.find(({ id }) => id === word.trim().toLowerCase())?.name ?? word;
}
