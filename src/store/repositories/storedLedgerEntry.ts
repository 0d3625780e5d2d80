import type { LedgerEntry } from '../../records/ledger.ts';
import type { LedgerEntryTable } from '../database/editionTables.ts';

/** An entry of a ledger as its row has it. */
export function ledgerEntryFromRow(row: LedgerEntryTable): LedgerEntry {
  return {
    sequence: row.sequence,
    clientId: row.client_id,
    kind: row.kind,
    at: row.at,
    sentAt: row.sent_at,
    receivedAt: row.received_at,
    actor: row.actor,
    device: row.device,
    payload: JSON.parse(row.payload_json),
  } as LedgerEntry;
}
