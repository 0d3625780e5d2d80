/** Editions, the ledger of their printing, which can only be added to, and their curated prints. */
export const editionMigration: readonly string[] = [
  `CREATE TABLE editions (
      id TEXT PRIMARY KEY,
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE RESTRICT,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL,
      archived INTEGER NOT NULL,
      sample INTEGER NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX editions_by_work ON editions (work_id, created_at DESC, id DESC)`,
  `CREATE TABLE ledger_entries (
      edition_id TEXT NOT NULL REFERENCES editions (id) ON DELETE RESTRICT,
      sequence INTEGER NOT NULL CHECK (sequence > 0),
      client_id TEXT NOT NULL,
      kind TEXT NOT NULL,
      at TEXT NOT NULL,
      sent_at TEXT,
      received_at TEXT NOT NULL,
      actor TEXT,
      device TEXT,
      photograph_id TEXT REFERENCES photographs (id) ON DELETE RESTRICT,
      payload_json TEXT NOT NULL,
      PRIMARY KEY (edition_id, sequence)
    ) STRICT, WITHOUT ROWID`,
  `CREATE UNIQUE INDEX ledger_entries_once ON ledger_entries (edition_id, client_id)`,
  `CREATE TRIGGER ledger_entries_never_change BEFORE UPDATE ON ledger_entries
    BEGIN SELECT RAISE(ABORT, 'what happened is never changed'); END`,
  `CREATE TRIGGER ledger_entries_never_go BEFORE DELETE ON ledger_entries
    BEGIN SELECT RAISE(ABORT, 'what happened is never removed'); END`,
  `CREATE TABLE edition_prints (
      edition_id TEXT NOT NULL REFERENCES editions (id) ON DELETE RESTRICT,
      impression TEXT NOT NULL,
      kind TEXT NOT NULL,
      number INTEGER CHECK (number > 0),
      PRIMARY KEY (edition_id, impression),
      FOREIGN KEY (edition_id, impression) REFERENCES ledger_entries (edition_id, client_id) ON DELETE RESTRICT,
      CHECK ((number IS NULL) = (kind NOT IN ('edition', 'artist', 'printer', 'trial')))
    ) STRICT, WITHOUT ROWID`,
  // one number is one print
  `CREATE UNIQUE INDEX edition_prints_once ON edition_prints (edition_id, kind, number) WHERE number IS NOT NULL`,
];
