import { ok, type Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import { noSuchComparison } from './findComparison.ts';
import type { ComparisonEvents } from './measuring/comparisonEvents.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';

/**
 * Puts a comparison that is done, not done or stopped into the measuring queue again. Where nothing changed that its
 * result depends on, the kept result is taken. One that waits or is being measured stays as it is.
 */
export async function startMeasuring(
  parts: {
    readonly store: Pick<Store, 'comparisons'>;
    readonly queue: Pick<MeasuringQueue, 'wake'>;
    readonly events: Pick<ComparisonEvents, 'announce'>;
    readonly now: () => Date;
  },
  id: string,
): Promise<Result<null>> {
  const moved = await parts.store.comparisons.move(id, ['measured', 'refused', 'not-done', 'stopped'], {
    to: 'waiting',
    finding: null,
    failure: null,
    resultKey: null,
    queuedAt: parts.now().toISOString(),
    interruptions: 0,
  });
  if (moved) {
    parts.events.announce({ id, state: 'waiting', progress: null });
    parts.queue.wake();
    return ok(null);
  }
  return (await parts.store.comparisons.find(id)) === null ? noSuchComparison() : ok(null);
}
