/** Pulls with the readings of their photographs, what is settled for a series, σ of the room, and good to print. */
export const pullMigration: readonly string[] = [
  `CREATE TABLE pulls (
      id TEXT PRIMARY KEY,
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE RESTRICT,
      number INTEGER NOT NULL CHECK (number > 0),
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL DEFAULT 0 CHECK (archived IN (0, 1)),
      sample INTEGER NOT NULL DEFAULT 0,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE UNIQUE INDEX pulls_by_number ON pulls (work_id, number) WHERE archived = 0`,
  `CREATE TABLE pull_measurings (
      pull_id TEXT NOT NULL REFERENCES pulls (id) ON DELETE RESTRICT,
      photograph_id TEXT NOT NULL REFERENCES photographs (id) ON DELETE RESTRICT,
      attached INTEGER NOT NULL DEFAULT 1 CHECK (attached IN (0, 1)),
      state TEXT NOT NULL CHECK (state IN ('waiting', 'measuring', 'measured', 'refused', 'failed', 'cancelled')),
      queued_at TEXT NOT NULL,
      result_key TEXT,
      failure_json TEXT,
      interruptions INTEGER NOT NULL DEFAULT 0,
      PRIMARY KEY (pull_id, photograph_id)
    ) STRICT, WITHOUT ROWID`,
  `CREATE INDEX pull_measurings_queued ON pull_measurings (queued_at) WHERE state IN ('waiting', 'measuring')`,
  `CREATE TABLE series_settings (
      work_id TEXT PRIMARY KEY REFERENCES works (id) ON DELETE RESTRICT,
      version INTEGER NOT NULL CHECK (version > 0),
      changed_at TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE TABLE room_noise (
      version INTEGER PRIMARY KEY CHECK (version > 0),
      typed REAL CHECK (typed > 0),
      saved_at TEXT NOT NULL
    ) STRICT`,
  `CREATE TABLE approvals (
      id TEXT PRIMARY KEY,
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE RESTRICT,
      pull_id TEXT NOT NULL REFERENCES pulls (id) ON DELETE RESTRICT,
      given_at TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX approvals_by_work ON approvals (work_id, given_at DESC)`,
  `CREATE TABLE approval_withdrawals (
      approval_id TEXT PRIMARY KEY REFERENCES approvals (id) ON DELETE RESTRICT,
      at TEXT NOT NULL,
      who TEXT NOT NULL,
      why TEXT NOT NULL
    ) STRICT`,
  `CREATE TRIGGER approvals_never_change BEFORE UPDATE ON approvals
    BEGIN SELECT RAISE(ABORT, 'what was approved is never changed'); END`,
  `CREATE TRIGGER approvals_never_go BEFORE DELETE ON approvals
    BEGIN SELECT RAISE(ABORT, 'what was approved is never removed'); END`,
];
