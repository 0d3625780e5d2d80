/** What long logs amount to, so that they open at once. A cache: a row that is gone or wrong is worked out again. */
export const foldMigration: readonly string[] = [
  `CREATE TABLE run_folds (
      run_id TEXT PRIMARY KEY REFERENCES runs (id) ON DELETE CASCADE,
      events INTEGER NOT NULL,
      version TEXT NOT NULL,
      seal TEXT NOT NULL,
      fold_json TEXT NOT NULL
    ) STRICT`,
];
