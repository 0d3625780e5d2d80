import { ok, type Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import { noSuchComparison } from './findComparison.ts';
import type { ComparisonEvents } from './measuring/comparisonEvents.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';

/**
 * Takes a comparison out of the measuring queue, or stops measuring it: its state changes at once where it waited,
 * and a moment later where it was being measured. One that is neither stays as it is.
 */
export async function stopMeasuring(
  parts: {
    readonly store: Pick<Store, 'comparisons'>;
    readonly queue: Pick<MeasuringQueue, 'stopMeasuring'>;
    readonly events: Pick<ComparisonEvents, 'announce'>;
  },
  id: string,
): Promise<Result<null>> {
  if (await parts.store.comparisons.move(id, ['waiting'], { to: 'stopped' })) {
    parts.events.announce({ id, state: 'stopped', progress: null });
    return ok(null);
  }
  parts.queue.stopMeasuring(id);
  return (await parts.store.comparisons.find(id)) === null ? noSuchComparison() : ok(null);
}
