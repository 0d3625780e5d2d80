import { mixtureSchema } from '../contract/mixture.ts';
import { failure } from '../foundation/failure.ts';
import { answerMixture } from '../studio/mixing/answerMixture.ts';
import { readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

/** `stonetone mix in.json`: works out one mixing question and prints the answer as JSON. */
export async function mix(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the question', example: 'such as in.json' }));
  const question = await readJson(file, mixtureSchema, 'mixture-malformed');
  if (!question.ok) return reportFailure(question.error);
  const answer = answerMixture(question.value);
  if (!answer.ok) return reportFailure(answer.error);
  console.log(JSON.stringify(answer.value, null, 1));
  return exitDone;
}
