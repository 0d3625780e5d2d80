import { dirname, join, resolve } from 'node:path';
import { answerComparisons } from '../application/suspects/answerComparisons.ts';
import { comparedRecordSchema, evidenceRecordSchema, suspectsQuestionSchema } from '../contract/suspects.ts';
import { failure } from '../foundation/failure.ts';
import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonRecord } from '../records/comparison.ts';
import type { EvidenceRecord } from '../records/evidence.ts';
import { answerSuspects } from '../studio/proofs/suspects/answerSuspects.ts';
import { readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

/** `stonetone suspects in.json`: names suspects behind a fault, with evidence and separating tests, as JSON. */
export async function suspects(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the question', example: 'such as in.json' }));
  const question = await readJson(file, suspectsQuestionSchema, 'suspects-malformed');
  if (!question.ok) return reportFailure(question.error);
  const { comparisons, features, log = {}, outcomes, room } = question.value;
  if (comparisons === undefined) {
    say(answerSuspects({ features: { ...features, ...log }, outcomes, room }));
    return exitDone;
  }
  const pulls: Compared[] = [];
  for (const comparison of comparisons) {
    const pull =
      typeof comparison === 'string'
        ? await readFolder(resolve(dirname(file), comparison))
        : ok(inlineRecord(comparison));
    if (!pull.ok) return reportFailure(pull.error);
    pulls.push(pull.value);
  }
  say(answerComparisons(pulls, { log: { ...features, ...log }, outcomes, room }));
  return exitDone;
}

interface Compared {
  readonly record: ComparisonRecord;
  readonly evidence: EvidenceRecord | null;
}

function inlineRecord(
  record: ComparisonRecord & { readonly evidence?: EvidenceRecord | undefined },
): Compared {
  return { record, evidence: record.evidence ?? null };
}

/** What `stonetone compare` left in a folder; evidence.json may be missing, as it was not always written. */
async function readFolder(folder: string): Promise<Result<Compared>> {
  const record = await readJson(join(folder, 'comparison.json'), comparedRecordSchema, 'suspects-malformed');
  if (!record.ok) return record;
  const evidence = await readJson(join(folder, 'evidence.json'), evidenceRecordSchema, 'suspects-malformed');
  if (evidence.ok) return ok({ record: record.value, evidence: evidence.value });
  return evidence.error.code === 'file-missing' ? ok(inlineRecord(record.value)) : evidence;
}

function say(answer: unknown): void {
  console.log(JSON.stringify(answer, null, 1));
}
