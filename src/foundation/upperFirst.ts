/** Words as the beginning of a sentence, written large. */
export function upperFirst(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
