/** What came of separating tests, and which cause was found in the end; only added to. */
export const suspectMigration: readonly string[] = [
  `CREATE TABLE suspect_outcomes (
      id TEXT PRIMARY KEY,
      comparison_id TEXT NOT NULL REFERENCES comparisons (id) ON DELETE RESTRICT,
      at TEXT NOT NULL,
      test TEXT,
      outcome TEXT CHECK (outcome IN ('yes', 'no')),
      found TEXT,
      CHECK ((test IS NULL) = (outcome IS NULL) AND (test IS NULL) <> (found IS NULL))
    ) STRICT`,
  `CREATE INDEX suspect_outcomes_by_comparison ON suspect_outcomes (comparison_id, at, id)`,
  `CREATE INDEX suspect_outcomes_found ON suspect_outcomes (comparison_id, at) WHERE found IS NOT NULL`,
];
