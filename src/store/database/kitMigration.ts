/**
 * The studio's kit, the newest pick of each tool found without reading logs, and the stage in which a run found its
 * work, so that taking back all that a run did restores it.
 */
export const kitMigration: readonly string[] = [
  `CREATE TABLE kit (
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL,
      sample INTEGER NOT NULL,
      search_text TEXT NOT NULL,
      tool TEXT NOT NULL CHECK (tool IN ('roller', 'ink', 'press', 'cloth', 'paper')),
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX kit_newest ON kit (created_at DESC, id DESC)`,
  `CREATE INDEX run_events_picked ON run_events (json_extract(payload_json, '$.tool'), received_at DESC)
    WHERE kind = 'picked'`,
  `ALTER TABLE runs ADD COLUMN work_stage TEXT`,
];
