import { ok, type Result } from '../../foundation/result.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import type { Store } from '../../store/openStore.ts';
import { pullEntryOf } from './pullEntryOf.ts';
import { pullOfWork } from './pullOfWork.ts';
import type { PullQueue } from './pullQueue.ts';

interface Parts {
  readonly store: Store;
  readonly pullQueue: PullQueue;
  readonly now: () => Date;
}

/** Puts the photographs of a pull back into the measuring queue: after it was stopped, a failure, or a change of the stone's photograph. */
export async function measurePullAgain(
  parts: Parts,
  workId: string,
  pullId: string,
): Promise<Result<PullEntry>> {
  const { store, pullQueue } = parts;
  const found = await pullOfWork(store, workId, pullId);
  if (!found.ok) return found;
  await store.pullMeasurings.queueAgain(pullId, parts.now().toISOString());
  pullQueue.wake();
  return ok(await pullEntryOf(parts, store, found.value.pull));
}

/** Stops measuring the photographs of a pull, waiting ones too. What was measured stays. */
export async function stopPullMeasuring(
  parts: Parts,
  workId: string,
  pullId: string,
): Promise<Result<PullEntry>> {
  const { store, pullQueue } = parts;
  const found = await pullOfWork(store, workId, pullId);
  if (!found.ok) return found;
  for (const { photograph } of await store.pullMeasurings.ofPull(pullId)) {
    await store.pullMeasurings.move(pullId, photograph, ['waiting'], { to: 'stopped' });
    pullQueue.stopMeasuring(pullId, photograph);
  }
  return ok(await pullEntryOf(parts, store, found.value.pull));
}
