import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { BatchEntry } from '../../records/batch.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { BatchQuery } from '../../store/repositories/batchRepository.ts';
import { badMark } from '../badMark.ts';
import { batchEntryOf } from './batchEntryOf.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'batches'>;
  readonly now: () => Date;
}

/** The failure for a batch that is not there. */
export function noSuchBatch(): Failure {
  return failure('not-found', { what: 'such batch' });
}

/** A page of batches, newest first; `body-malformed` where `after` marks no place. */
export async function listBatches(
  { store, now }: Parts,
  query: BatchQuery,
): Promise<Result<{ readonly batches: readonly BatchEntry[]; readonly next: string | null }>> {
  const page = await store.batches.list(query);
  if (page === null) return badMark();
  return ok({ batches: page.batches.map((batch) => batchEntryOf(batch, now())), next: page.next });
}

/** One batch, put by or not; or `not-found`. */
export async function readBatch({ store, now }: Parts, id: string): Promise<Result<BatchEntry>> {
  const batch = await store.batches.find(id);
  return batch === null ? fail(noSuchBatch()) : ok(batchEntryOf(batch, now()));
}
