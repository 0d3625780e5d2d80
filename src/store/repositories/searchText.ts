/**
 * Folds text for searching: lower case, accents taken off, one blank between words.
 * `Étude` and `etude` find each other.
 */
export function foldForSearch(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/\s+/g, ' ').trim();
}

/** The folded words of a search, each of which must be found. */
export function searchWords(search: string): readonly string[] {
  return foldForSearch(search).split(' ').filter(Boolean);
}

/** The folded text with its figures padded, so that sorting puts S-2 before S-10. */
export function sortKey(text: string): string {
  return foldForSearch(text).replace(/\d+/g, (figures) => figures.padStart(12, '0'));
}
