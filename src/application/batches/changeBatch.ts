import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { Batch, BatchDraft, BatchEntry, BatchKind } from '../../records/batch.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { batchEntryOf, daysFrom } from './batchEntryOf.ts';
import { noSuchBatch } from './findBatches.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<Batch, BatchEntry> = {
  shelf: ({ batches }) => batches,
  named: ({ name }) => `the batch ${name}`,
  missing: noSuchBatch,
  shown: (kept, _records, now) => batchEntryOf(kept, now),
};

/** What a person changed about a batch of one kind; the kind is named so that the right fields are asked for. */
export type BatchChanges = Partial<BatchDraft> & { readonly version: number; readonly kind: BatchKind };

/**
 * Enters a batch.
 * @returns `body-malformed` for a day that has not come yet
 */
export function createBatch(parts: SavingParts, draft: BatchDraft): Promise<Saved<BatchEntry>> {
  return parts.store.decide(async (records) => {
    const now = parts.now();
    const fault = judgeDays(draft, now);
    if (fault) return refused(fault);
    const batch: Batch = newEntry(parts, draft);
    await records.batches.add(batch);
    return ok(batchEntryOf(batch, now));
  });
}

/**
 * Saves what a person changed about a batch. Plans keep what the batch said when they were made.
 * @returns `stale-save` with the batch as it is now, `put-by`, `not-found`, or `body-malformed` for another kind
 *   or a day that has not come yet
 */
export function changeBatch(
  parts: Parts,
  id: string,
  { version, ...changes }: BatchChanges,
): Promise<Saved<BatchEntry>> {
  return saveEntry(parts, kind, id, version, (kept) => {
    if (kept.putBy) return isPutBy(`The batch ${kept.name}`);
    if (kept.kind !== changes.kind) {
      return refused(failure('body-malformed', { why: `the batch is of the kind ${kept.kind}` }, 'kind'));
    }
    const batch = withChanges<Batch>(kept, changes as Partial<Batch>);
    const fault = judgeDays(batch, parts.now());
    return fault ? refused(fault) : ok(batch);
  });
}

/**
 * Takes a batch off the list, or brings it back.
 * @returns `stale-save` with the batch as it is now, or `not-found`
 */
export function putBatchBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<BatchEntry>> {
  return putEntryBy(parts, kind, id, change);
}

/** A day to come is a slip of the pen; one day is let pass, for a clock that stands in another zone. */
function judgeDays(batch: BatchDraft, now: Date): Failure | null {
  const days = { madeOn: batch.madeOn, opened: 'opened' in batch ? batch.opened : null };
  for (const [field, day] of Object.entries(days)) {
    if (day !== null && daysFrom(day, now) < -1) {
      return failure('body-malformed', { why: `${day} has not come yet` }, field);
    }
  }
  return null;
}
