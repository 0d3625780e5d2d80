import { readFile } from 'node:fs/promises';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ComparedPull } from '../../imaging/evidence/comparedFeatures.ts';
import { type EvidenceRecord, evidenceSchema } from '../../records/evidence.ts';
import type { Features, SuspectsAnswer } from '../../records/suspects.ts';
import type { Store } from '../../store/openStore.ts';
import type { ReadRunParts } from '../bench/readRun.ts';
import { findComparison } from '../findComparison.ts';
import { answerComparisons } from './answerComparisons.ts';
import { caseOutcomes } from './caseOutcomes.ts';
import { logFeaturesOf } from './logFeaturesOf.ts';

export interface SuspectParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<Store, 'comparisons' | 'resultFiles' | 'suspectOutcomes'>;
}

interface Asked {
  /** The comparison of an earlier pull of the same stone; null: none. */
  readonly earlier: string | null;
  /** The run whose log is taken in; null: none. */
  readonly run: string | null;
}

/** Suspects behind what a comparison shows, with the outcomes that were kept for it; `not-found` before it is measured. */
export async function readSuspects(
  parts: SuspectParts,
  id: string,
  asked: Asked,
): Promise<Result<SuspectsAnswer>> {
  const pulls: ComparedPull[] = [];
  for (const one of asked.earlier === null ? [id] : [asked.earlier, id]) {
    const pull = await comparedPull(parts, one);
    if (!pull.ok) return pull;
    pulls.push(pull.value);
  }
  const log = asked.run === null ? ok<Features>({}) : await logFeaturesOf(parts, asked.run);
  if (!log.ok) return log;
  const kept = await caseOutcomes(parts.store, { comparisonId: id });
  return ok(
    answerComparisons(pulls, { log: log.value, ...kept, room: await parts.store.suspectOutcomes.counts() }),
  );
}

async function comparedPull({ store }: SuspectParts, id: string): Promise<Result<ComparedPull>> {
  const comparison = await findComparison(store, id);
  if (!comparison.ok) return comparison;
  const { resultKey } = comparison.value;
  const record = resultKey === null ? null : await store.resultFiles.record(resultKey);
  if (resultKey === null || record === null)
    return fail(failure('not-found', { what: 'measured record of it' }));
  const path = await store.resultFiles.pathOf(resultKey, 'evidence.json');
  const evidence = path === null ? null : (JSON.parse(await readFile(path, 'utf8')) as EvidenceRecord);
  // One of an earlier form is told as missing: measuring again makes it anew.
  return ok({ record, evidence: evidence?.schema === evidenceSchema ? evidence : null });
}
