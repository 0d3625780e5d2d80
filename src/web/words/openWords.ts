import { setWordsInUse } from '../../words/wordsInUse.ts';
import { wordsOfChoice } from '../../words/wordsOfChoice.ts';
import { keptChoice } from './wordChoice.ts';

/** Brings the words that this device has chosen, before any screen is loaded. English needs no catalogue. */
export async function openWords(): Promise<void> {
  const choice = keptChoice(localStorage, navigator.languages);
  if (choice.language === 'de') {
    const [{ german }, words] = await Promise.all([import('./catalogue/german.ts'), wordsOfChoice(choice)]);
    setWordsInUse({ ...words, sentences: german });
  } else {
    setWordsInUse({ ...choice, sentences: {} });
  }
  document.documentElement.lang = choice.language;
}
