import { mediumCatalogue } from './mediumCatalogue.ts';

/**
 * A medium as people call it, where it is written as files write it (`crayon-2`); every other word stays, and so does one whose
 * name holds a comma, by which media are parted where they are typed.
 */
export function mediumName(word: string): string {
  const name = mediumCatalogue.find(({ id }) => id === word.trim().toLowerCase())?.name;
  return name === undefined || name.includes(',') ? word : name;
}
