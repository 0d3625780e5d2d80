import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Material } from '../../records/material.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { PageQuery } from '../../store/repositories/pageMark.ts';
import { badMark } from '../badMark.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'materials'>;
}

export interface MaterialPage {
  readonly materials: readonly Material[];
  readonly next: string | null;
}

/** The failure for a material that is not there. */
export function noSuchMaterial(): Failure {
  return failure('not-found', { what: 'such material' });
}

/** A page of the register, newest first; `body-malformed` where `after` marks no place. */
export async function listMaterials({ store }: Parts, query: PageQuery): Promise<Result<MaterialPage>> {
  const listed = await store.materials.list(query);
  return listed === null ? badMark() : ok({ materials: listed.page, next: listed.next });
}

/** One material, put by or not; or `not-found`. */
export async function readMaterial({ store }: Parts, id: string): Promise<Result<Material>> {
  const material = await store.materials.find(id);
  return material === null ? fail(noSuchMaterial()) : ok(material);
}
