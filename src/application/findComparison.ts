import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import type { StoredComparison } from '../store/repositories/storedComparison.ts';

/** The failure for a comparison that is not there, or was put by. */
export function noSuchComparison(): Result<never> {
  return fail(failure('not-found', { what: 'such comparison' }));
}

/** A comparison's row by its id, or `not-found`. */
export async function findComparison(
  store: Pick<Store, 'comparisons'>,
  id: string,
): Promise<Result<StoredComparison>> {
  const comparison = await store.comparisons.find(id);
  return comparison === null ? noSuchComparison() : ok(comparison);
}
