import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { Work, WorkDraft } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { withUnknowns } from './createWork.ts';
import { noSuchWork } from './findWork.ts';
import { judgeWork } from './judgeWork.ts';
import { workEntryOf } from './workEntryOf.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

/**
 * Saves what a person changed about a work.
 * @returns `stale-save` with the work as it is now, `archived`, or the faults of `judgeWork`
 */
export function changeWork(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<WorkDraft>,
): Promise<Saved<WorkEntry>> {
  return saveWork(parts, id, version, (kept) => {
    if (kept.archived) return refused(failure('archived', { what: `The work ${kept.title}` }));
    return ok(withChanges<Work>(kept, changes));
  });
}

/**
 * Takes a work off the list, or brings it back.
 * @returns `stale-save` with the work as it is now, or `archived` where its stone is
 */
export function archiveWork(
  parts: Parts,
  id: string,
  { version, archived }: { readonly version: number; readonly archived: boolean },
): Promise<Saved<WorkEntry>> {
  return saveWork(parts, id, version, (kept) => ok({ ...kept, archived }));
}

/** Saves a work as `change` makes it of what is kept, if that is still at the version that the save started from. */
export function saveWork(
  { store, now }: Parts,
  id: string,
  version: number,
  change: (kept: Work) => Saved<Work>,
): Promise<Saved<WorkEntry>> {
  return store.decide<WorkEntry, SaveRefusal<WorkEntry>>(async (records) => {
    const kept = await records.works.find(id);
    if (kept === null) return refused(noSuchWork());
    if (kept.version !== version) {
      return stale(
        `the work ${kept.title}`,
        { yours: version, kept: kept.version },
        await workEntryOf(records, kept),
      );
    }
    const changed = change(kept);
    if (!changed.ok) return refused(changed.error.failure);
    const fault = await judgeWork(records, changed.value);
    if (fault) return refused(fault);
    const next: Work = {
      ...changed.value,
      origin: withUnknowns(changed.value.origin),
      version: version + 1,
      changedAt: now().toISOString(),
    };
    await records.works.save(next, version);
    return ok(await workEntryOf(records, next));
  });
}
