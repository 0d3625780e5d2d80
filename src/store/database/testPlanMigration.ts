/** Planned tests, kept as they are made. */
export const testPlanMigration: readonly string[] = [
  `CREATE TABLE test_plans (
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL DEFAULT 0 CHECK (archived IN (0, 1)),
      sample INTEGER NOT NULL DEFAULT 0,
      search_text TEXT NOT NULL,
      made INTEGER NOT NULL DEFAULT 0 CHECK (made IN (0, 1)),
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX test_plans_newest ON test_plans (created_at DESC, id DESC)`,
];
