import { proofSeriesSchema } from '../contract/proofSeries.ts';
import { failure } from '../foundation/failure.ts';
import { answerSeries } from '../studio/proofs/answerSeries.ts';
import { readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

/** `stonetone series in.json`: says whether a series of pulls is steady, and prints the answer as JSON. */
export async function series(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the series', example: 'such as in.json' }));
  const question = await readJson(file, proofSeriesSchema, 'series-malformed');
  if (!question.ok) return reportFailure(question.error);
  console.log(JSON.stringify(answerSeries(question.value), null, 1));
  return exitDone;
}
