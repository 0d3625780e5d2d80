import { readTrialTable } from '../application/trials/readTrialTable.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { TrialColumns } from '../records/trial.ts';
import { analyseTrial } from '../studio/trials/analyseTrial.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readText } from './readInput.ts';
import { reportFailure } from './report.ts';
import { trialDesign } from './trialDesign.ts';
import { trialRead } from './trialRead.ts';

const analyseOptions: OptionList = {
  csv: 'readings.csv',
  response: 'tone',
  block: 'stone',
  whole: 'etch',
  sub: 'medium',
  strip: 'strip',
  control: 'None',
};

/** `stonetone trial design | read | analyse`: lays a test stone out, reads one, or analyses a table of its patches as JSON. */
export async function trial(words: readonly string[]): Promise<number> {
  const [what, ...rest] = words;
  const answer = await answerOf(what, rest);
  if (!answer.ok) return reportFailure(answer.error);
  console.log(answer.value);
  return exitDone;
}

async function answerOf(what: string | undefined, words: readonly string[]): Promise<Result<string>> {
  switch (what) {
    case 'design':
      return trialDesign(words);
    case 'read':
      return trialRead(words);
    case 'analyse':
      return analyse(words);
    case undefined:
      return fail(failure('argument-missing', { name: 'what to do', example: 'design, read or analyse' }));
    default:
      return fail(failure('argument-unknown', { name: what }));
  }
}

async function analyse(words: readonly string[]): Promise<Result<string>> {
  const given = readArguments(words, analyseOptions);
  if (!given.ok) return given;
  const file = required(given.value, 'csv', analyseOptions.csv!);
  if (!file.ok) return file;
  const columns = columnsOf(given.value.options);
  if (!columns.ok) return columns;
  const text = await readText(file.value);
  if (!text.ok) return text;
  const table = readTrialTable(text.value, columns.value);
  if (!table.ok) return table;
  const control = given.value.options.get('control') ?? null;
  return ok(JSON.stringify(analyseTrial(table.value, columns.value, control), null, 1));
}

function columnsOf(options: ReadonlyMap<string, string>): Result<TrialColumns> {
  const response = options.get('response');
  if (response === undefined)
    return fail(failure('argument-missing', { name: '--response', example: 'the column of the readings' }));
  const columns = {
    response,
    blocks: options.get('block')?.split(',') ?? [],
    whole: options.get('whole') ?? null,
    sub: options.get('sub') ?? null,
    strip: options.get('strip') ?? null,
  };
  if (columns.whole === null && columns.sub === null)
    return fail(
      failure('argument-missing', { name: '--whole or --sub', example: 'the column of a treatment' }),
    );
  return ok(columns);
}
