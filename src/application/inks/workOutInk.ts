import type { InkAnswer, InkQuestion } from '../../records/inkAnswer.ts';
import { answerInk } from '../../studio/ink/answerInk.ts';

/** Where to start a mix of ink from, and how many grams; nothing is kept. */
export function workOutInk(question: InkQuestion): InkAnswer {
  return answerInk(question);
}
