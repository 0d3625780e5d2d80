import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonEntry } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import { comparisonEntryOf, type EntryParts } from './comparisonEntryOf.ts';
import { findComparison } from './findComparison.ts';

/** One comparison whole, with its record once there is one; or `not-found`. */
export async function readComparison(
  parts: EntryParts & { readonly store: Pick<Store, 'comparisons' | 'resultFiles'> },
  id: string,
): Promise<Result<ComparisonEntry>> {
  const comparison = await findComparison(parts.store, id);
  return comparison.ok ? ok(await comparisonEntryOf(parts, comparison.value)) : comparison;
}
