import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { Pull, PullDraft } from '../../records/pull.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import { type Changes, refused, type Saved, stale, withChanges } from '../saving.ts';
import type { PullSavingParts } from './createPull.ts';
import { judgePull } from './judgePull.ts';
import { pullEntryOf } from './pullEntryOf.ts';
import { pullOfWork } from './pullOfWork.ts';

/**
 * Saves what a person changed about a pull; photographs that are new to it wait to be measured, and those whose corners
 * or chips changed wait again.
 * @returns `stale-save` with the pull as it is now, `put-by`, or the faults of `judgePull`
 */
export function changePull(
  parts: PullSavingParts,
  workId: string,
  pullId: string,
  { version, ...changes }: Changes<PullDraft>,
): Promise<Saved<PullEntry>> {
  return savePull(parts, workId, pullId, version, (kept) => {
    if (kept.putBy) return refused(failure('put-by', { what: `Pull ${kept.number}` }));
    return ok(withChanges<Pull>(kept, changes));
  });
}

/** Lays a pull aside, or lays it out again; its number is free meanwhile. */
export function putPullBy(
  parts: PullSavingParts,
  workId: string,
  pullId: string,
  { version, putBy }: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<PullEntry>> {
  return savePull(parts, workId, pullId, version, (kept) => ok({ ...kept, putBy }));
}

async function savePull(
  parts: PullSavingParts,
  workId: string,
  pullId: string,
  version: number,
  change: (kept: Pull) => Saved<Pull>,
): Promise<Saved<PullEntry>> {
  const saved = await parts.store.decide<PullEntry, SaveRefusal<PullEntry>>(async (records) => {
    const found = await pullOfWork(records, workId, pullId);
    if (!found.ok) return refused(found.error);
    const { pull: kept } = found.value;
    if (kept.version !== version) {
      const versions = { yours: version, kept: kept.version };
      return stale(`pull ${kept.number}`, versions, await pullEntryOf(parts, records, kept));
    }
    const changed = change(kept);
    if (!changed.ok) return refused(changed.error.failure);
    const fault = await judgePull(records, changed.value);
    if (fault) return refused(fault);
    const at = parts.now().toISOString();
    const next: Pull = { ...changed.value, version: version + 1, changedAt: at };
    await records.pulls.save(next, version);
    const photographs = next.photographs.map(({ photograph }) => photograph);
    await records.pullMeasurings.attach(next.id, photographs, at);
    if (readsOtherwise(kept, next)) await records.pullMeasurings.queueAgain(next.id, at);
    return ok(await pullEntryOf(parts, records, next));
  });
  if (saved.ok) parts.pullQueue.wake();
  return saved;
}

/** Whether a photograph that stays would be read otherwise: what was read before is found again by its key. */
function readsOtherwise(kept: Pull, next: Pull): boolean {
  return next.photographs.some(({ photograph, corners, chips }) => {
    const before = kept.photographs.find((one) => one.photograph === photograph);
    return before && JSON.stringify([before.corners, before.chips]) !== JSON.stringify([corners, chips]);
  });
}
