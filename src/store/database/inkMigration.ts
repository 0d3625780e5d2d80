/** Mixes of ink, each made for a work or for none in particular. */
export const inkMigration: readonly string[] = [
  `CREATE TABLE inks (
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL DEFAULT 0 CHECK (archived IN (0, 1)),
      sample INTEGER NOT NULL DEFAULT 0,
      search_text TEXT NOT NULL,
      work_id TEXT REFERENCES works (id) ON DELETE RESTRICT,
      verdict TEXT CHECK (verdict IN ('good', 'too soft', 'too stiff', 'other')),
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX inks_newest ON inks (created_at DESC, id DESC)`,
  `CREATE INDEX inks_by_work ON inks (work_id, created_at DESC, id DESC)`,
];
