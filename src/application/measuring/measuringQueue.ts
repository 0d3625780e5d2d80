import type { ComparisonRecord } from '../../records/comparison.ts';
import type { Store } from '../../store/openStore.ts';
import type { ComparisonMove, StoredComparison } from '../../store/repositories/storedComparison.ts';
import type { ComparisonEvents } from './comparisonEvents.ts';
import { jobOf } from './jobOf.ts';
import type { MeasuringOutcome } from './measuringJob.ts';
import { resultKey } from './resultKey.ts';
import {
  createWaitingQueue,
  type MeasureInThread,
  type UnmeasuredMove,
  type WaitingQueue,
} from './waitingQueue.ts';

export interface MeasuringQueueParts {
  readonly store: Pick<Store, 'comparisons' | 'photographs' | 'photographFiles' | 'resultFiles' | 'folder'>;
  readonly events: ComparisonEvents;
  /** The measuring thread's module. */
  readonly module: URL;
  readonly engineVersion: string;
  /** The finding of a record in one sentence. */
  readonly findingOf: (record: ComparisonRecord) => string;
  /** Waits for the one place at which something is measured, whatever is. */
  readonly turn: <T>(measure: () => Promise<T>) => Promise<T>;
}

/** The queue of comparisons, by their ids. */
export type MeasuringQueue = WaitingQueue;

/** Measures waiting comparisons. */
export function createMeasuringQueue(parts: MeasuringQueueParts): MeasuringQueue {
  const { store, events } = parts;

  async function measure(
    { request }: StoredComparison,
    inThread: MeasureInThread,
  ): Promise<ComparisonMove | UnmeasuredMove> {
    const key = resultKey(request, parts.engineVersion);
    const known = await store.resultFiles.record(key);
    if (known !== null) return measuredAs(known, key);
    const { value, ended } = await inThread<MeasuringOutcome>(parts.module, await jobOf(store, request));
    if (ended) return ended;
    await store.resultFiles.keep(key, value.record, value.files);
    return measuredAs(value.record, key);
  }

  function measuredAs(record: ComparisonRecord, key: string): ComparisonMove {
    const to = record.verdict === 'ok' ? 'measured' : 'refused';
    return { to, finding: parts.findingOf(record), resultKey: key, failure: null, interruptions: 0 };
  }

  return createWaitingQueue<StoredComparison, StoredComparison, ComparisonMove>({
    name: 'measuring queue',
    keyOf: ({ id }) => id,
    nextWaiting: () => store.comparisons.nextWaiting(),
    take: async (comparison) =>
      (await store.comparisons.move(comparison.id, ['waiting'], { to: 'measuring' })) ? comparison : null,
    measure,
    end: ({ id }, move) => store.comparisons.move(id, ['measuring'], move),
    tell: ({ id }, state, progress) => events.announce({ id, state, progress }),
    turn: parts.turn,
  });
}
