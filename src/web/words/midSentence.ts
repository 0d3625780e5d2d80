import { wordsInUse } from '../../words/wordsInUse.ts';

/** A name that starts a line, as it stands inside a sentence: small in English; German nouns keep their letter. */
export function midSentence(words: string): string {
  return wordsInUse().language === 'de' ? words : words.toLowerCase();
}

/** The same where the words may hold names of their own, so that only the first letter goes small. */
export function midSentenceFirst(words: string): string {
  return wordsInUse().language === 'de' ? words : words.slice(0, 1).toLowerCase() + words.slice(1);
}
