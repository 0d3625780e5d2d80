import { ok, type Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import { noSuchComparison } from './findComparison.ts';
import type { MeasuringQueue } from './measuring/measuringQueue.ts';

/**
 * Takes a comparison off every list, and stops measuring it. Its row, photographs and results stay in the data
 * folder, since the photographs may be all that is left of a stone.
 */
export async function removeComparison(
  parts: {
    readonly store: Pick<Store, 'comparisons'>;
    readonly queue: Pick<MeasuringQueue, 'stopMeasuring'>;
    readonly now: () => Date;
  },
  id: string,
): Promise<Result<null>> {
  if (!(await parts.store.comparisons.putBy(id, parts.now().toISOString()))) return noSuchComparison();
  parts.queue.stopMeasuring(id);
  return ok(null);
}
