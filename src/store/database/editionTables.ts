export interface EditionTable {
  readonly id: string;
  readonly work_id: string;
  readonly created_at: string;
  readonly changed_at: string;
  /** Raised by one at every save. */
  readonly version: number;
  readonly put_by: number;
  readonly sample: number;
  readonly record_json: string;
}

/** What happened at the press; rows are added, and the database refuses to change or remove one. */
export interface LedgerEntryTable {
  readonly edition_id: string;
  /** From 1, without gaps, within an edition. */
  readonly sequence: number;
  readonly client_id: string;
  readonly kind: string;
  readonly at: string;
  readonly sent_at: string | null;
  readonly received_at: string;
  readonly actor: string | null;
  readonly device: string | null;
  /** Keeps a photograph from vanishing under it. */
  readonly photograph_id: string | null;
  readonly payload_json: string;
}

/** What was made of an impression; the database refuses a number that is given already. */
export interface EditionPrintTable {
  readonly edition_id: string;
  readonly impression: string;
  readonly kind: string;
  readonly number: number | null;
}

export interface EditionTables {
  readonly editions: EditionTable;
  readonly ledger_entries: LedgerEntryTable;
  readonly edition_prints: EditionPrintTable;
}
