import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { KitDraft, KitEntry, KitTool } from '../../records/kit.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import { refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { noSuchKit } from './findKit.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

/** What a person changed about a tool or set-up; which tool it is is named so that the right fields are asked for. */
export type KitChanges = Partial<KitDraft> & { readonly version: number; readonly tool: KitTool };

/** Puts a tool or set-up into the kit. */
export function createKit(parts: SavingParts, draft: KitDraft): Promise<Saved<KitEntry>> {
  return parts.store.decide(async (records) => {
    const createdAt = parts.now().toISOString();
    const entry: KitEntry = {
      ...draft,
      id: parts.newId(),
      archived: false,
      version: 1,
      createdAt,
      changedAt: createdAt,
      sample: parts.sample ?? false,
    };
    await records.kit.add(entry);
    return ok(entry);
  });
}

/**
 * Saves what a person changed about a tool or set-up. Runs keep the words that it was picked with.
 * @returns `stale-save` with the entry as it is now, `archived`, `not-found`, or `body-malformed` for another tool
 */
export function changeKit(
  parts: Parts,
  id: string,
  { version, ...changes }: KitChanges,
): Promise<Saved<KitEntry>> {
  return saveKit(parts, id, version, (kept) => {
    if (kept.archived) return refused(failure('archived', { what: kept.name }));
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
export function archiveKit(
  parts: Parts,
  id: string,
  { version, archived }: { readonly version: number; readonly archived: boolean },
): Promise<Saved<KitEntry>> {
  return saveKit(parts, id, version, (kept) => ok({ ...kept, archived }));
}

function saveKit(
  { store, now }: Parts,
  id: string,
  version: number,
  change: (kept: KitEntry) => Saved<KitEntry>,
): Promise<Saved<KitEntry>> {
  return store.decide<KitEntry, SaveRefusal<KitEntry>>(async ({ kit }) => {
    const kept = await kit.find(id);
    if (kept === null) return refused(noSuchKit());
    if (kept.version !== version) return stale(kept.name, { yours: version, kept: kept.version }, kept);
    const changed = change(kept);
    if (!changed.ok) return refused(changed.error.failure);
    const next: KitEntry = { ...changed.value, version: version + 1, changedAt: now().toISOString() };
    await kit.save(next, version);
    return ok(next);
  });
}
