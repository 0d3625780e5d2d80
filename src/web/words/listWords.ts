import { say } from './say.ts';

/** Things in a row: `a`, `a and b`, `a, b and c`. */
export function listWords(words: readonly string[]): string {
  return words.length < 2
    ? words.join('')
    : say('{words} and {words2}', { words: words.slice(0, -1).join(', '), words2: words.at(-1) });
}
