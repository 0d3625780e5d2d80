import { setImmediate as nextTurn } from 'node:timers/promises';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { RunFolds } from './runFolds.ts';

/**
 * Works out behind everything else what the newest logs of the works in use amount to, so that the first look at a rack
 * or a bench finds it. A log that cannot be read is told of when somebody looks at it.
 */
export function warmFolds({
  store,
  runFolds,
}: {
  readonly store: Pick<KeptRecords, 'runs'>;
  readonly runFolds: Pick<RunFolds, 'told'>;
}): { stop(): Promise<void> } {
  let stopped = false;
  const warming = (async () => {
    await nextTurn();
    const newest = stopped ? [] : await store.runs.newestOfWorks();
    // the longest last: whoever looks first must not stand behind it
    for (const { id } of newest.toSorted((one, other) => one.events - other.events)) {
      await nextTurn();
      if (stopped) return;
      // asked anew: something may have been logged since
      const run = await store.runs.find(id);
      if (run !== null && run.events > 0) await runFolds.told(run);
    }
  })().catch(() => {});
  return {
    stop() {
      stopped = true;
      return warming;
    },
  };
}
