import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Store } from '../../store/openStore.ts';
import type { ComparisonEvents } from '../measuring/comparisonEvents.ts';
import type { MeasuringQueue } from '../measuring/measuringQueue.ts';
import { stopMeasuring } from '../stopMeasuring.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';

/**
 * Takes the prints of a test stone out of the queue, and stops reading the one that is being read. What was read of others
 * stays; what was stopped can be asked for again.
 * @returns `not-found` without the test stone
 */
export async function stopTestReadings(
  parts: {
    readonly store: Pick<Store, 'testStones' | 'comparisons'>;
    readonly queue: Pick<MeasuringQueue, 'stopMeasuring'>;
    readonly events: Pick<ComparisonEvents, 'announce'>;
  },
  id: string,
): Promise<Result<null>> {
  const stone = await parts.store.testStones.find(id);
  if (stone === null) return fail(noSuchTestStone());
  for (const { comparisonId } of stone.prints)
    if (comparisonId !== null) await stopMeasuring(parts, comparisonId);
  return ok(null);
}
