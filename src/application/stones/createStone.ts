import { ok } from '../../foundation/result.ts';
import type { KeptStone, StoneDraft, StoneEntry } from '../../records/stoneEntry.ts';
import { newEntry } from '../keptEntry.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { judgeStoneDraft } from './judgeStoneDraft.ts';
import { stoneEntryOf } from './stoneEntryOf.ts';

/**
 * Enters a stone.
 * @returns `stone-impossible`, `name-taken` or `photograph-unknown` with the path to the field
 */
export function createStone(parts: SavingParts, draft: StoneDraft): Promise<Saved<StoneEntry>> {
  return parts.store.decide(async (records) => {
    const stone: KeptStone = newEntry(parts, draft);
    const fault = await judgeStoneDraft(records, stone);
    if (fault) return refused(fault);
    await records.stones.add(stone);
    return ok(await stoneEntryOf(records, stone));
  });
}
