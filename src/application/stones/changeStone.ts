import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { KeptStone, StoneDraft, StoneEntry } from '../../records/stoneEntry.ts';
import { type EntryKind, isPutBy, saveEntry } from '../keptEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { noSuchStone } from './findStone.ts';
import { judgeStoneDraft, judgeWorksOnStone } from './judgeStoneDraft.ts';
import { stoneEntryOf } from './stoneEntryOf.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<KeptStone, StoneEntry> = {
  shelf: ({ stones }) => stones,
  named: ({ name }) => `the stone ${name}`,
  missing: noSuchStone,
  shown: (kept, records) => stoneEntryOf(records, kept),
};

/**
 * Saves what a person changed about a stone.
 * @returns `stale-save` with the stone as it is now, `put-by`, `stone-too-small` for a work on it, or the faults
 *   of `createStone`
 */
export function changeStone(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<StoneDraft>,
): Promise<Saved<StoneEntry>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    if (kept.putBy) return isPutBy(`The stone ${kept.name}`);
    const stone = withChanges<KeptStone>(kept, changes);
    const fault = (await judgeStoneDraft(records, stone)) ?? (await judgeWorksOnStone(records, stone));
    return fault ? refused(fault) : ok(stone);
  });
}

/**
 * Takes a stone out of the rack, or brings it back.
 * @returns `stale-save` with the stone as it is now, `stone-in-use` while a work lies on it, or `name-taken`
 */
export function putStoneBy(
  parts: Parts,
  id: string,
  { version, putBy }: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<StoneEntry>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    const [work] = putBy ? await records.works.onStone(id, 1) : [];
    if (work) return refused(failure('stone-in-use', { name: kept.name, work: work.title }));
    const taken = !putBy && (await records.stones.hasName(kept.name, id));
    if (taken) return refused(failure('name-taken', { what: 'stone', name: kept.name }, 'name'));
    return ok({ ...kept, putBy });
  });
}
