/**
 * Folds text for searching: lower case, accents taken off, one blank between words.
 * `Étude` and `etude` find each other.
 */
export function foldForSearch(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/\s+/g, ' ').trim();
}
