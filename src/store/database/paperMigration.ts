/** Reports that are kept with their words, and protocols of other studios. */
export const paperMigration: readonly string[] = ['reports', 'foreign_protocols'].flatMap((table) => [
  `CREATE TABLE ${table} (
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL,
      sample INTEGER NOT NULL,
      search_text TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX ${table}_newest ON ${table} (created_at DESC, id DESC)`,
]);
