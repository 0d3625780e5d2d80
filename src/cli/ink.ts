import { inkQuestionSchema } from '../contract/ink.ts';
import { failure } from '../foundation/failure.ts';
import { answerInk } from '../studio/ink/answerInk.ts';
import { readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

/** `stonetone ink in.json`: where to start a mix of ink from and how much of it, as JSON. */
export async function ink(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the question', example: 'such as in.json' }));
  const question = await readJson(file, inkQuestionSchema, 'ink-malformed');
  if (!question.ok) return reportFailure(question.error);
  console.log(JSON.stringify(answerInk(question.value), null, 1));
  return exitDone;
}
