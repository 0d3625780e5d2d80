import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { ComparisonSummary } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';

export interface ListQuery {
  /** Words that must all be found in title, finding, or the zones' names and media; empty for all. */
  readonly search: string;
  /** Where the page before ended; null for the first page. */
  readonly after: string | null;
  readonly limit: number;
}

export interface ComparisonList {
  readonly comparisons: readonly ComparisonSummary[];
  /** To be given as `after` for the next page; null on the last. */
  readonly next: string | null;
}

/** A page of comparisons, newest first; `body-malformed` where `after` names none. */
export async function listComparisons(
  parts: {
    readonly store: Pick<Store, 'comparisons'>;
    readonly queue: Pick<MeasuringQueue, 'progressOf'>;
  },
  query: ListQuery,
): Promise<Result<ComparisonList>> {
  const page = await parts.store.comparisons.list(query);
  if (page === null) return fail(failure('body-malformed', { why: 'after names no comparison' }, 'after'));
  const comparisons = page.comparisons.map((listed) => ({
    ...listed,
    progress: parts.queue.progressOf(listed.id),
  }));
  return ok({ comparisons, next: page.next });
}
