import { workerData } from 'node:worker_threads';
import { setWordsInUse } from '../../words/wordsInUse.ts';
import { wordsOfChoice } from '../../words/wordsOfChoice.ts';
import { answer } from './answer.ts';
import type { SheetTask } from './sheetTask.ts';

/** In a thread of its own: sets the sheet it was started for, in the words asked for, and answers its bytes. */
export async function answerSheet<Input>(
  set: (input: Input) => Uint8Array | Promise<Uint8Array>,
): Promise<void> {
  const { input, words } = workerData as SheetTask<Input>;
  setWordsInUse(await wordsOfChoice(words));
  answer(await set(input));
}
