import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { KeptStone, StoneDraft, StoneEntry } from '../../records/stoneEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { noSuchStone } from './findStone.ts';
import { judgeStoneDraft, judgeWorksOnStone } from './judgeStoneDraft.ts';
import { stoneEntryOf } from './stoneEntryOf.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

/**
 * Saves what a person changed about a stone.
 * @returns `stale-save` with the stone as it is now, `archived`, `stone-too-small` for a work on it, or the faults
 *   of `createStone`
 */
export function changeStone(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<StoneDraft>,
): Promise<Saved<StoneEntry>> {
  return saveStone(parts, id, version, async (records, kept) => {
    if (kept.archived) return refused(failure('archived', { what: `The stone ${kept.name}` }));
    const stone = withChanges<KeptStone>(kept, changes);
    const fault = (await judgeStoneDraft(records, stone)) ?? (await judgeWorksOnStone(records, stone));
    return fault ? refused(fault) : ok(stone);
  });
}

/**
 * Takes a stone out of the rack, or brings it back.
 * @returns `stale-save` with the stone as it is now, `stone-in-use` while a work lies on it, or `name-taken`
 */
export function archiveStone(
  parts: Parts,
  id: string,
  { version, archived }: { readonly version: number; readonly archived: boolean },
): Promise<Saved<StoneEntry>> {
  return saveStone(parts, id, version, async (records, kept) => {
    const [work] = archived ? await records.works.onStone(id, 1) : [];
    if (work) return refused(failure('stone-in-use', { name: kept.name, work: work.title }));
    const taken = !archived && (await records.stones.hasName(kept.name, id));
    if (taken) return refused(failure('name-taken', { what: 'stone', name: kept.name }, 'name'));
    return ok({ ...kept, archived });
  });
}

function saveStone(
  { store, now }: Parts,
  id: string,
  version: number,
  change: (records: KeptRecords, kept: KeptStone) => Promise<Saved<KeptStone>>,
): Promise<Saved<StoneEntry>> {
  return store.decide<StoneEntry, SaveRefusal<StoneEntry>>(async (records) => {
    const kept = await records.stones.find(id);
    if (kept === null) return refused(noSuchStone());
    if (kept.version !== version) {
      return stale(
        `the stone ${kept.name}`,
        { yours: version, kept: kept.version },
        await stoneEntryOf(records, kept),
      );
    }
    const changed = await change(records, kept);
    if (!changed.ok) return refused(changed.error.failure);
    const next = { ...changed.value, version: version + 1, changedAt: now().toISOString() };
    await records.stones.save(next, version);
    return ok(await stoneEntryOf(records, next));
  });
}
