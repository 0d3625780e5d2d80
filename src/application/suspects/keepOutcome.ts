import { ok, type Result } from '../../foundation/result.ts';
import type { KeptOutcome } from '../../records/suspects.ts';
import type { Store } from '../../store/openStore.ts';
import { findComparison } from '../findComparison.ts';

interface KeepParts {
  readonly store: Pick<Store, 'comparisons' | 'suspectOutcomes'>;
  readonly now: () => Date;
  readonly newId: () => string;
}

/** Keeps what came of a separating test, or which cause was found in the end; a later one counts instead of an earlier. */
export async function keepOutcome(
  { store, now, newId }: KeepParts,
  comparisonId: string,
  outcome: KeptOutcome,
): Promise<Result<null>> {
  const comparison = await findComparison(store, comparisonId);
  if (!comparison.ok) return comparison;
  await store.suspectOutcomes.add({ id: newId(), comparisonId, at: now().toISOString(), outcome });
  return ok(null);
}
