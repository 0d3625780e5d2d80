import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { Material, MaterialDraft } from '../../records/material.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { noSuchMaterial } from './findMaterial.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;

/** Enters a material into the register. */
export function createMaterial(parts: SavingParts, draft: MaterialDraft): Promise<Saved<Material>> {
  return parts.store.decide(async ({ materials }) => {
    const createdAt = parts.now().toISOString();
    const material: Material = {
      ...draft,
      id: parts.newId(),
      archived: false,
      version: 1,
      createdAt,
      changedAt: createdAt,
      sample: parts.sample ?? false,
    };
    await materials.add(material);
    return ok(material);
  });
}

/**
 * Saves what a person changed about a material.
 * @returns `stale-save` with the material as it is now, `archived` or `not-found`
 */
export function changeMaterial(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<MaterialDraft>,
): Promise<Saved<Material>> {
  return saveMaterial(parts, id, version, (kept) =>
    kept.archived
      ? refused(failure('archived', { what: kept.name }))
      : ok(withChanges<Material>(kept, changes)),
  );
}

/**
 * Takes a material out of the register, or brings it back.
 * @returns `stale-save` with the material as it is now, or `not-found`
 */
export function archiveMaterial(
  parts: Parts,
  id: string,
  { version, archived }: { readonly version: number; readonly archived: boolean },
): Promise<Saved<Material>> {
  return saveMaterial(parts, id, version, (kept) => ok({ ...kept, archived }));
}

function saveMaterial(
  { store, now }: Parts,
  id: string,
  version: number,
  change: (kept: Material) => Saved<Material>,
): Promise<Saved<Material>> {
  return store.decide<Material, SaveRefusal<Material>>(async ({ materials }) => {
    const kept = await materials.find(id);
    if (kept === null) return refused(noSuchMaterial());
    if (kept.version !== version) return stale(kept.name, { yours: version, kept: kept.version }, kept);
    const changed = change(kept);
    if (!changed.ok) return refused(changed.error.failure);
    const next: Material = { ...changed.value, version: version + 1, changedAt: now().toISOString() };
    await materials.save(next, version);
    return ok(next);
  });
}
