import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonEntry } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import { comparisonEntryOf, type EntryParts } from './comparisonEntryOf.ts';
import { findComparison } from './findComparison.ts';
import { sealedEntry, sealOfComparison } from './testStones/sealedComparison.ts';

/**
 * One comparison whole, with its record once there is one; or `not-found`. One that reads a test stone tells no media while
 * that stone's list is sealed.
 */
export async function readComparison(
  parts: EntryParts & { readonly store: Pick<Store, 'comparisons' | 'resultFiles' | 'testStones'> },
  id: string,
): Promise<Result<ComparisonEntry>> {
  const comparison = await findComparison(parts.store, id);
  if (!comparison.ok) return comparison;
  const entry = await comparisonEntryOf(parts, comparison.value);
  return ok((await sealOfComparison(parts, comparison.value)) ? sealedEntry(entry) : entry);
}
