const firstOnes = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
] as const;

/** The number that a place in a row is called by, from 1; null where the word is none. */
export function ordinalNumber(word: string): number | null {
  const known = (firstOnes as readonly string[]).indexOf(word) + 1;
  const figures = /^(\d+)(?:st|nd|rd|th)$/.exec(word)?.[1];
  return known > 0 ? known : figures === undefined ? null : Number(figures);
}

/** The place in a row in English: `first` … `twelfth`, `13th`. @param number from 1 */
export function ordinal(number: number): string {
  const word = firstOnes[number - 1];
  if (word) return word;
  const last = number % 100 > 10 && number % 100 < 14 ? 0 : number % 10;
  return `${number}${last === 1 ? 'st' : last === 2 ? 'nd' : last === 3 ? 'rd' : 'th'}`;
}
