import { fieldPath, issueReason } from '../contract/fieldPath.ts';
import { mixtureSchema } from '../contract/mixture.ts';
import { failure } from '../foundation/failure.ts';
import { answerMixture } from '../studio/mixing/answerMixture.ts';
import { readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readText } from './readInput.ts';
import { reportFailure } from './report.ts';

/** `stonetone mix in.json`: works out one mixing question and prints the answer as JSON. */
export async function mix(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the question', example: 'such as in.json' }));
  const text = await readText(file);
  if (!text.ok) return reportFailure(text.error);
  let json: unknown;
  try {
    json = JSON.parse(text.value.replace(/^\uFEFF/, ''));
  } catch {
    return reportFailure(failure('mixture-malformed', { why: `${file} is not JSON` }));
  }
  const question = mixtureSchema.safeParse(json);
  if (!question.success) {
    const path = fieldPath(question.error);
    return reportFailure(failure('mixture-malformed', { why: issueReason(question.error) }, path));
  }
  const answer = answerMixture(question.data);
  if (!answer.ok) return reportFailure(answer.error);
  console.log(JSON.stringify(answer.value, null, 1));
  return exitDone;
}
