/** Version 5: runs at the bench, and what happened in them, which can only be added to. */
export const runMigration: readonly string[] = [
  `CREATE TABLE runs (
      id TEXT PRIMARY KEY,
      client_id TEXT UNIQUE,
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE RESTRICT,
      plan_id TEXT REFERENCES plans (id) ON DELETE RESTRICT,
      work_version INTEGER NOT NULL,
      started_at TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX runs_by_work ON runs (work_id, started_at DESC, id DESC)`,
  `CREATE TABLE run_events (
      run_id TEXT NOT NULL REFERENCES runs (id) ON DELETE RESTRICT,
      sequence INTEGER NOT NULL CHECK (sequence > 0),
      client_id TEXT NOT NULL,
      kind TEXT NOT NULL,
      at TEXT NOT NULL,
      sent_at TEXT,
      received_at TEXT NOT NULL,
      actor TEXT,
      device TEXT,
      payload_json TEXT NOT NULL,
      PRIMARY KEY (run_id, sequence)
    ) STRICT, WITHOUT ROWID`,
  `CREATE UNIQUE INDEX run_events_once ON run_events (run_id, client_id)`,
  `CREATE TRIGGER run_events_never_change BEFORE UPDATE ON run_events
    BEGIN SELECT RAISE(ABORT, 'what happened is never changed'); END`,
  `CREATE TRIGGER run_events_never_go BEFORE DELETE ON run_events
    BEGIN SELECT RAISE(ABORT, 'what happened is never removed'); END`,
];
