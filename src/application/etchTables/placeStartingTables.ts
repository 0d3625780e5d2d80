import type { Store } from '../../store/openStore.ts';
import { startingTables } from '../plan/planFromInput.ts';

/** Keeps the tables that every studio starts with in a data folder that has them not, or not at their newest version. */
export async function placeStartingTables({
  store,
  now,
}: {
  readonly store: Pick<Store, 'etchTables'>;
  readonly now: () => Date;
}): Promise<void> {
  const savedAt = now().toISOString();
  for (const table of startingTables) await store.etchTables.add({ table, savedAt, starting: true });
}
