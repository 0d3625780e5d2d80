import type { LedgerEntry, LedgerEntryInput } from '../../../records/ledger.ts';

/** What waits to be sent: all that is needed but the moment of sending. */
export type UnsentEntry = Omit<LedgerEntryInput, 'sentAt'>;

/** A ledger with what this device logged and the server doesn't hold yet, each once, in order. */
export function shownLedger(
  kept: readonly LedgerEntry[],
  unsent: readonly UnsentEntry[],
): readonly LedgerEntry[] {
  const known = new Set(kept.map(({ clientId }) => clientId));
  const last = kept.at(-1)?.sequence ?? 0;
  const waiting = unsent
    .filter(({ clientId }) => !known.has(clientId))
    .map(
      (entry, index) =>
        ({ ...entry, sequence: last + index + 1, sentAt: null, receivedAt: entry.at }) as LedgerEntry,
    );
  return [...kept, ...waiting];
}
