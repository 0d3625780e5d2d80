const edited = `
      id TEXT PRIMARY KEY,
      created_at TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      archived INTEGER NOT NULL DEFAULT 0 CHECK (archived IN (0, 1)),
      sample INTEGER NOT NULL DEFAULT 0,
      search_text TEXT NOT NULL`;

/** Version 4: stones, the works on them, batches, etch tables in versions, own media, and plans. */
export const recordMigration: readonly string[] = [
  `CREATE TABLE stones (${edited},
      name TEXT NOT NULL,
      name_key TEXT NOT NULL,
      width_mm REAL NOT NULL CHECK (width_mm > 0),
      height_mm REAL NOT NULL CHECK (height_mm > 0),
      colour TEXT NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX stones_by_name ON stones (name_key, id, archived, search_text)`,
  `CREATE TABLE stone_photographs (
      stone_id TEXT NOT NULL REFERENCES stones (id) ON DELETE CASCADE,
      photograph_id TEXT NOT NULL REFERENCES photographs (id) ON DELETE RESTRICT,
      PRIMARY KEY (stone_id, photograph_id)
    ) STRICT, WITHOUT ROWID`,
  `CREATE TABLE works (${edited},
      stone_id TEXT NOT NULL REFERENCES stones (id) ON DELETE RESTRICT,
      title TEXT NOT NULL,
      stage TEXT NOT NULL,
      halfway INTEGER NOT NULL,
      zone_count INTEGER NOT NULL,
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX works_newest ON works (changed_at DESC, id DESC, archived, stone_id, search_text)`,
  `CREATE INDEX works_by_stone ON works (stone_id, changed_at DESC, id DESC, archived)`,
  `CREATE INDEX works_by_stage ON works (stage, changed_at DESC, id DESC, archived)`,
  `CREATE TABLE work_photographs (
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE CASCADE,
      photograph_id TEXT NOT NULL REFERENCES photographs (id) ON DELETE RESTRICT,
      PRIMARY KEY (work_id, photograph_id)
    ) STRICT, WITHOUT ROWID`,
  `CREATE TABLE work_media (
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE CASCADE,
      medium TEXT NOT NULL,
      zone_name TEXT NOT NULL,
      PRIMARY KEY (medium, work_id)
    ) STRICT, WITHOUT ROWID`,
  `CREATE INDEX work_media_by_work ON work_media (work_id)`,
  `CREATE TABLE batches (${edited},
      kind TEXT NOT NULL CHECK (kind IN ('gum', 'tannic', 'washout', 'base')),
      record_json TEXT NOT NULL
    ) STRICT`,
  `CREATE INDEX batches_newest ON batches (created_at DESC, id DESC)`,
  `CREATE TABLE etch_table_versions (
      table_id TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      name TEXT NOT NULL,
      starting INTEGER NOT NULL,
      saved_at TEXT NOT NULL,
      rows_json TEXT NOT NULL,
      PRIMARY KEY (table_id, version)
    ) STRICT`,
  `CREATE TABLE media (
      id TEXT PRIMARY KEY,
      name TEXT NOT NULL,
      version INTEGER NOT NULL CHECK (version > 0),
      rule_json TEXT NOT NULL
    ) STRICT`,
  `CREATE TABLE plans (
      id TEXT PRIMARY KEY,
      work_id TEXT NOT NULL REFERENCES works (id) ON DELETE RESTRICT,
      line TEXT NOT NULL CHECK (line IN ('first', 'second')),
      created_at TEXT NOT NULL,
      work_version INTEGER NOT NULL,
      table_id TEXT NOT NULL,
      table_version INTEGER NOT NULL,
      tannic_batch_id TEXT REFERENCES batches (id) ON DELETE RESTRICT,
      feasible TEXT NOT NULL,
      record_json TEXT NOT NULL,
      FOREIGN KEY (table_id, table_version) REFERENCES etch_table_versions (table_id, version) ON DELETE RESTRICT
    ) STRICT`,
  `CREATE INDEX plans_by_work ON plans (work_id, line, created_at DESC, id DESC)`,
];
