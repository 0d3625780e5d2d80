import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { ComparisonEntry, ComparisonRequest, ComparisonSide } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import type { StoredComparison } from '../store/repositories/storedComparison.ts';
import { comparisonEntryOf, type EntryParts } from './comparisonEntryOf.ts';
import type { ComparisonEvents } from './measuring/comparisonEvents.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';

export interface CreateComparisonParts extends EntryParts {
  readonly store: Pick<Store, 'comparisons' | 'photographs' | 'resultFiles'>;
  readonly queue: Pick<MeasuringQueue, 'wake' | 'progressOf'>;
  readonly events: Pick<ComparisonEvents, 'announce'>;
  readonly now: () => Date;
  readonly newId: () => string;
}

/**
 * Sets up a comparison and puts it into the measuring queue.
 *
 * @returns `photograph-unknown` with the path of the field
 */
export async function createComparison(
  parts: CreateComparisonParts,
  request: ComparisonRequest,
): Promise<Result<ComparisonEntry>> {
  for (const use of ['stone', 'proof'] as const) {
    const missing = await missingPhotograph(parts.store, request[use], use);
    if (!missing.ok) return missing;
  }
  const at = parts.now().toISOString();
  const comparison: StoredComparison = {
    id: parts.newId(),
    title: request.title,
    createdAt: at,
    state: 'waiting',
    sample: false,
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

async function missingPhotograph(
  store: Pick<Store, 'photographs'>,
  side: ComparisonSide,
  use: 'stone' | 'proof',
): Promise<Result<null>> {
  for (const field of ['photograph', 'repeat', 'flat'] as const) {
    const id = side[field];
    if (id === null || (await store.photographs.find(id)) !== null) continue;
    return fail(failure('photograph-unknown', { use }, `${use}.${field}`));
  }
  return ok(null);
}
