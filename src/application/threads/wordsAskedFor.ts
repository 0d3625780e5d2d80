import { AsyncLocalStorage } from 'node:async_hooks';
import { plainChoice, type WordChoice } from '../../records/wordChoice.ts';

const asked = new AsyncLocalStorage<WordChoice>();

/** Does what a request asks for; every sheet set on the way is in its words, units and days. */
export function askedIn<Answer>(choice: WordChoice, work: () => Answer): Answer {
  return asked.run(choice, work);
}

/** The words, units and days of the sheet that is asked for: plain English where nobody asks for others. */
export function wordsAskedFor(): WordChoice {
  return asked.getStore() ?? plainChoice;
}
