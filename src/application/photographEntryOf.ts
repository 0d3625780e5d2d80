import type { PhotographEntry } from '../records/comparisonEntry.ts';
import type { StoredPhotograph } from '../store/repositories/photographRepository.ts';

/** A stored photograph as screens see it: without what only the store needs. */
export function photographEntryOf(stored: StoredPhotograph): PhotographEntry {
  const { id, fileName, widthPx, heightPx, addedAt } = stored;
  return { id, fileName, widthPx, heightPx, addedAt };
}
