/** The studio's settings, of which there is one row, and what a work is to have reached by when. */
export const studioMigration: readonly string[] = [
  `CREATE TABLE studio_settings (
      one INTEGER PRIMARY KEY CHECK (one = 1),
      version INTEGER NOT NULL CHECK (version > 0),
      changed_at TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE TABLE deadlines (
      work_id TEXT PRIMARY KEY REFERENCES works (id) ON DELETE RESTRICT,
      version INTEGER NOT NULL CHECK (version > 0),
      changed_at TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT, WITHOUT ROWID`,
];
