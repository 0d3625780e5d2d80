import type { Kysely } from 'kysely';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { LedgerEntryTable } from '../database/editionTables.ts';
import type { Tables } from '../database/tables.ts';
import { ledgerEntryFromRow } from './storedLedgerEntry.ts';

export interface LedgerRepository {
  /** The entry that a client id stands for in an edition. */
  entryOf(editionId: string, clientId: string): Promise<LedgerEntry | null>;
  addEntry(editionId: string, entry: LedgerEntry): Promise<void>;
  /** All entries in order. */
  entries(editionId: string): Promise<readonly LedgerEntry[]>;
  /** The last sequence number; 0 for none. */
  last(editionId: string): Promise<number>;
}

function toRow(editionId: string, entry: LedgerEntry): LedgerEntryTable {
  return {
    edition_id: editionId,
    sequence: entry.sequence,
    client_id: entry.clientId,
    kind: entry.kind,
    at: entry.at,
    sent_at: entry.sentAt,
    received_at: entry.receivedAt,
    actor: entry.actor,
    device: entry.device,
    photograph_id: 'photograph' in entry.payload ? (entry.payload.photograph ?? null) : null,
    payload_json: JSON.stringify(entry.payload),
  };
}

/** The ledgers' rows of an open database or of a transaction. Rows are added and never changed. */
export function ledgerRepositoryIn(database: Kysely<Tables>): LedgerRepository {
  return {
    async entryOf(editionId, clientId) {
      const row = await database
        .selectFrom('ledger_entries')
        .selectAll()
        .where('edition_id', '=', editionId)
        .where('client_id', '=', clientId)
        .executeTakeFirst();
      return row ? ledgerEntryFromRow(row) : null;
    },
    async addEntry(editionId, entry) {
      await database.insertInto('ledger_entries').values(toRow(editionId, entry)).execute();
    },
    async entries(editionId) {
      const rows = await database
        .selectFrom('ledger_entries')
        .selectAll()
        .where('edition_id', '=', editionId)
        .orderBy('sequence')
        .execute();
      return rows.map(ledgerEntryFromRow);
    },
    async last(editionId) {
      const row = await database
        .selectFrom('ledger_entries')
        .select(({ fn }) => fn.max('sequence').as('last'))
        .where('edition_id', '=', editionId)
        .executeTakeFirst();
      return row?.last ?? 0;
    },
  };
}
