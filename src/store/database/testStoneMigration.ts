/** Test stones, what was read of them by eye and put right by hand. */
export const testStoneMigration: readonly string[] = [
  `CREATE TABLE test_stones (
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL,
      sample INTEGER NOT NULL,
      search_text TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX test_stones_newest ON test_stones (created_at DESC, id DESC)`,
  `CREATE TABLE test_stone_photographs (
      test_stone_id TEXT NOT NULL REFERENCES test_stones (id) ON DELETE CASCADE,
      photograph_id TEXT NOT NULL REFERENCES photographs (id) ON DELETE RESTRICT,
      PRIMARY KEY (test_stone_id, photograph_id)
    ) STRICT, WITHOUT ROWID`,
  `CREATE TABLE test_stone_events (
      test_stone_id TEXT NOT NULL REFERENCES test_stones (id) ON DELETE RESTRICT,
      sequence INTEGER NOT NULL CHECK (sequence > 0),
      client_id TEXT NOT NULL,
      kind TEXT NOT NULL,
      at TEXT NOT NULL,
      actor TEXT NOT NULL,
      payload_json TEXT NOT NULL,
      PRIMARY KEY (test_stone_id, sequence)
    ) STRICT, WITHOUT ROWID`,
  `CREATE UNIQUE INDEX test_stone_events_once ON test_stone_events (test_stone_id, client_id)`,
  `CREATE TRIGGER test_stone_events_never_change BEFORE UPDATE ON test_stone_events
    BEGIN SELECT RAISE(ABORT, 'what was read is never changed'); END`,
  `CREATE TRIGGER test_stone_events_never_go BEFORE DELETE ON test_stone_events
    BEGIN SELECT RAISE(ABORT, 'what was read is never removed'); END`,
];
