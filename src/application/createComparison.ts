import { fail, ok, type Result } from '../foundation/result.ts';
import type { ComparisonEntry, ComparisonRequest } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import type { StoredComparison } from '../store/repositories/storedComparison.ts';
import { comparisonEntryOf, type EntryParts } from './comparisonEntryOf.ts';
import type { ComparisonEvents } from './measuring/comparisonEvents.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';
import { validateRequest } from './validateRequest.ts';

export interface CreateComparisonParts extends EntryParts {
  readonly store: Pick<Store, 'comparisons' | 'photographs' | 'resultFiles'>;
  readonly queue: Pick<MeasuringQueue, 'wake' | 'progressOf'>;
  readonly events: Pick<ComparisonEvents, 'announce'>;
  readonly now: () => Date;
  readonly newId: () => string;
  /** True while the invented studio's own are told. */
  readonly sample?: boolean;
}

/**
 * Sets up a comparison and puts it into the measuring queue.
 *
 * @returns the faults of `validateRequest`
 */
export async function createComparison(
  parts: CreateComparisonParts,
  request: ComparisonRequest,
): Promise<Result<ComparisonEntry>> {
  const fault = await validateRequest(parts.store, request);
  if (fault) return fail(fault);
  const at = parts.now().toISOString();
  const comparison: StoredComparison = {
    id: parts.newId(),
    title: request.title,
    createdAt: at,
    state: 'waiting',
    sample: parts.sample ?? false,
    request,
    finding: null,
    failure: null,
    resultKey: null,
    queuedAt: at,
    interruptions: 0,
  };
  await parts.store.comparisons.add(comparison);
  parts.events.announce({ id: comparison.id, state: 'waiting', progress: null });
  parts.queue.wake();
  return ok(await comparisonEntryOf(parts, comparison));
}
