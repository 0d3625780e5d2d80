import { editionQuestionSchema } from '../contract/edition.ts';
import { failure } from '../foundation/failure.ts';
import { planEdition } from '../studio/editions/editionPlan.ts';
import { readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

/** `stonetone edition in.json`: what an edition needs, as JSON: sheets, paper, ink, minutes, rack places. */
export async function edition(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the edition', example: 'such as in.json' }));
  const question = await readJson(file, editionQuestionSchema, 'edition-malformed');
  if (!question.ok) return reportFailure(question.error);
  console.log(JSON.stringify(planEdition(question.value), null, 1));
  return exitDone;
}
