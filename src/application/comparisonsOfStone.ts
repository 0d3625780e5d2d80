import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonSummary } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import { findComparison } from './findComparison.ts';

/**
 * The other measured comparisons that stand on the same photograph of the stone and the same size, newest first: what a
 * comparison can be held against. `not-found` for no such comparison.
 */
export async function comparisonsOfStone(
  { store }: { readonly store: Pick<Store, 'comparisons'> },
  id: string,
): Promise<Result<readonly ComparisonSummary[]>> {
  const own = await findComparison(store, id);
  if (!own.ok) return own;
  const { stone, sizeMm } = own.value.request;
  const onIt = await store.comparisons.ofPhotographs([stone.photograph]);
  const alike = onIt.filter(
    ({ id: other, state, request }) =>
      other !== id &&
      state === 'measured' &&
      request.stone.photograph === stone.photograph &&
      String(request.sizeMm) === String(sizeMm),
  );
  return ok(
    alike.toReversed().map(({ id: other, title, createdAt, state, finding, sample }) => ({
      id: other,
      title,
      createdAt,
      state,
      finding,
      sample,
      progress: null,
    })),
  );
}
