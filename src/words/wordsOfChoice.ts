import type { WordChoice } from '../records/wordChoice.ts';
import type { WordsInUse } from './wordsInUse.ts';

/** The words that a sheet of a choice is set in. English needs no catalogue. */
export async function wordsOfChoice(choice: WordChoice): Promise<WordsInUse> {
  if (choice.language === 'en') return { ...choice, sentences: {} };
  const { germanTold } = await import('./catalogue/german.ts');
  return { ...choice, sentences: {}, told: germanTold };
}
