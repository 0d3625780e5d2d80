import { ok } from '../../foundation/result.ts';
import type { Work, WorkDraft } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import { type EntryKind, isPutBy, saveEntry } from '../keptEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { withUnknowns } from './createWork.ts';
import { noSuchWork } from './findWork.ts';
import { judgeWork } from './judgeWork.ts';
import { workEntryOf } from './workEntryOf.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<Work, WorkEntry> = {
  shelf: ({ works }) => works,
  named: ({ title }) => `the work ${title}`,
  missing: noSuchWork,
  shown: (kept, records) => workEntryOf(records, kept),
};

/**
 * Saves what a person changed about a work.
 * @returns `stale-save` with the work as it is now, `put-by`, or the faults of `judgeWork`
 */
export function changeWork(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<WorkDraft>,
): Promise<Saved<WorkEntry>> {
  return saveWork(parts, id, version, (kept) => {
    if (kept.putBy) return isPutBy(`The work ${kept.title}`);
    return ok(withChanges<Work>(kept, changes));
  });
}

/**
 * Takes a work off the list, or brings it back.
 * @returns `stale-save` with the work as it is now, or `put-by` where its stone is
 */
export function putWorkBy(
  parts: Parts,
  id: string,
  { version, putBy }: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<WorkEntry>> {
  return saveWork(parts, id, version, (kept) => ok({ ...kept, putBy }));
}

/** Saves a work as `change` makes it of what is kept, if that is still at the version that the save started from. */
export function saveWork(
  parts: Parts,
  id: string,
  version: number,
  change: (kept: Work) => Saved<Work>,
): Promise<Saved<WorkEntry>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    const changed = change(kept);
    if (!changed.ok) return changed;
    const fault = await judgeWork(records, changed.value);
    return fault ? refused(fault) : ok({ ...changed.value, origin: withUnknowns(changed.value.origin) });
  });
}
