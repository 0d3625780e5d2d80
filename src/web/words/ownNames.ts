import { told } from './told.ts';

/** A kept name as a field shows it: one of `own`, which the program names itself, in the page's language; any other as it was typed. */
export function shownName(kept: string, own: readonly string[]): string {
  return own.includes(kept) ? told(kept) : kept;
}

/** What stands in a field as it is kept: one of `own`, said in the page's language, by its English name; any other as it is. */
export function keptName(shown: string, own: readonly string[]): string {
  return own.find((name) => told(name) === shown) ?? shown;
}
