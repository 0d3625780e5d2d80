/** What came of separating tests at the proof desk, and which cause was found behind a pull in the end; only added to. */
export const pullSuspectMigration: readonly string[] = [
  `CREATE TABLE pull_suspect_outcomes (
      id TEXT PRIMARY KEY,
      pull_id TEXT NOT NULL REFERENCES pulls (id) ON DELETE RESTRICT,
      at TEXT NOT NULL,
      test TEXT,
      outcome TEXT CHECK (outcome IN ('yes', 'no')),
      found TEXT,
      CHECK ((test IS NULL) = (outcome IS NULL) AND (test IS NULL) <> (found IS NULL))
    ) STRICT`,
  `CREATE INDEX pull_suspect_outcomes_by_pull ON pull_suspect_outcomes (pull_id, at, id)`,
  `CREATE INDEX pull_suspect_outcomes_found ON pull_suspect_outcomes (pull_id, at) WHERE found IS NOT NULL`,
];
