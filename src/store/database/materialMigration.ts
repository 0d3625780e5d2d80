/** Materials with what their safety data sheets say. */
export const materialMigration: readonly string[] = [
  `CREATE TABLE materials (
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL,
      sample INTEGER NOT NULL,
      search_text TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX materials_newest ON materials (created_at DESC, id DESC)`,
];
