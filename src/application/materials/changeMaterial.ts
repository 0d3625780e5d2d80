import { ok } from '../../foundation/result.ts';
import type { Material, MaterialDraft } from '../../records/material.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { type Changes, type Saved, type SavingParts, withChanges } from '../saving.ts';
import { noSuchMaterial } from './findMaterial.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

const kind: EntryKind<Material> = {
  shelf: ({ materials }) => materials,
  named: ({ name }) => name,
  missing: noSuchMaterial,
  shown: (kept) => kept,
};

/** Enters a material into the register. */
export function createMaterial(parts: SavingParts, draft: MaterialDraft): Promise<Saved<Material>> {
  return parts.store.decide(async ({ materials }) => {
    const material: Material = newEntry(parts, draft);
    await materials.add(material);
    return ok(material);
  });
}

/**
 * Saves what a person changed about a material.
 * @returns `stale-save` with the material as it is now, `put-by` or `not-found`
 */
export function changeMaterial(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<MaterialDraft>,
): Promise<Saved<Material>> {
  return saveEntry(parts, kind, id, version, (kept) =>
    kept.putBy ? isPutBy(kept.name) : ok(withChanges<Material>(kept, changes)),
  );
}

/**
 * Takes a material out of the register, or brings it back.
 * @returns `stale-save` with the material as it is now, or `not-found`
 */
export function putMaterialBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<Material>> {
  return putEntryBy(parts, kind, id, change);
}
