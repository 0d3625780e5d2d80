import type { LedgerEntry } from '../../records/ledger.ts';

/** The entries that still count, in order: what was undone is left out, and undoing an undo restores. */
export function countingEntries(all: readonly LedgerEntry[]): readonly LedgerEntry[] {
  const undone = new Set<string>();
  const counting: LedgerEntry[] = [];
  for (const entry of all.toReversed()) {
    if (undone.delete(entry.clientId)) continue;
    if (entry.kind === 'undo') undone.add(entry.payload.clientId);
    else counting.push(entry);
  }
  return counting.reverse();
}

/** The last entry of a device that counts and can be taken back; null where there is none. */
export function lastOwnEntry(all: readonly LedgerEntry[], device: string): LedgerEntry | null {
  return countingEntries(all).findLast((entry) => entry.device === device) ?? null;
}
