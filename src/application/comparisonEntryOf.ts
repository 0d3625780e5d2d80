import type { ComparisonEntry } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import type { StoredComparison } from '../store/repositories/storedComparison.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';

export interface EntryParts {
  readonly store: Pick<Store, 'resultFiles'>;
  readonly queue: Pick<MeasuringQueue, 'progressOf'>;
}

/** A comparison whole: its row, how far its measuring has come, its record and the names of its files. */
export async function comparisonEntryOf(
  { store, queue }: EntryParts,
  comparison: StoredComparison,
): Promise<ComparisonEntry> {
  const { id, title, createdAt, state, sample, request, finding, failure, resultKey } = comparison;
  return {
    id,
    title,
    createdAt,
    state,
    progress: queue.progressOf(id),
    finding,
    sample,
    request,
    record: resultKey === null ? null : await store.resultFiles.record(resultKey),
    failure,
    files: resultKey === null ? [] : await store.resultFiles.names(resultKey),
  };
}
