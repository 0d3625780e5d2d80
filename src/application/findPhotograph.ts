import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import type { StoredPhotograph } from '../store/repositories/photographRepository.ts';

/** A kept photograph by its id, or `not-found`. */
export async function findPhotograph(
  store: Pick<Store, 'photographs'>,
  id: string,
): Promise<Result<StoredPhotograph>> {
  const photograph = await store.photographs.find(id);
  return photograph === null ? fail(failure('not-found', { what: 'such photograph' })) : ok(photograph);
}
