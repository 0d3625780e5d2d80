import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { KitDraft, KitEntry, KitTool } from '../../records/kit.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { refused, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { noSuchKit } from './findKit.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<KitEntry> = {
  shelf: ({ kit }) => kit,
  named: ({ name }) => name,
  missing: noSuchKit,
  shown: (kept) => kept,
};

/** What a person changed about a tool or set-up; which tool it is is named so that the right fields are asked for. */
export type KitChanges = Partial<KitDraft> & { readonly version: number; readonly tool: KitTool };

/** Puts a tool or set-up into the kit. */
export function createKit(parts: SavingParts, draft: KitDraft): Promise<Saved<KitEntry>> {
  return parts.store.decide(async (records) => {
    const entry: KitEntry = newEntry(parts, draft);
    await records.kit.add(entry);
    return ok(entry);
  });
}

/**
 * Saves what a person changed about a tool or set-up. Runs keep the words that it was picked with.
 * @returns `stale-save` with the entry as it is now, `put-by`, `not-found`, or `body-malformed` for another tool
 */
export function changeKit(
  parts: Parts,
  id: string,
  { version, ...changes }: KitChanges,
): Promise<Saved<KitEntry>> {
  return saveEntry(parts, kind, id, version, (kept) => {
    if (kept.putBy) return isPutBy(kept.name);
    if (kept.tool !== changes.tool) {
      return refused(failure('body-malformed', { why: `${kept.name} is of the tool ${kept.tool}` }, 'tool'));
    }
    return ok(withChanges<KitEntry>(kept, changes as Partial<KitEntry>));
  });
}

/**
 * Takes a tool or set-up out of the kit, or brings it back.
 * @returns `stale-save` with the entry as it is now, or `not-found`
 */
export function putKitBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<KitEntry>> {
  return putEntryBy(parts, kind, id, change);
}
