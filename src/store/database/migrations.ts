import { deviceMigration } from './deviceMigration.ts';
import { editionMigration } from './editionMigration.ts';
import { foldMigration } from './foldMigration.ts';
import { impressionMigration } from './impressionMigration.ts';
import { inkMigration } from './inkMigration.ts';
import { issueMigration } from './issueMigration.ts';
import { kitMigration } from './kitMigration.ts';
import { materialMigration } from './materialMigration.ts';
import { paperMigration } from './paperMigration.ts';
import { pullKindMigration } from './pullKindMigration.ts';
import { pullMigration } from './pullMigration.ts';
import { pullSuspectMigration } from './pullSuspectMigration.ts';
import { putByMigration } from './putByMigration.ts';
import { recordMigration } from './recordMigration.ts';
import { runMigration } from './runMigration.ts';
import { shutOutMigration } from './shutOutMigration.ts';
import { stoppedMigration } from './stoppedMigration.ts';
import { studioMigration } from './studioMigration.ts';
import { suspectMigration } from './suspectMigration.ts';
import { testPlanMigration } from './testPlanMigration.ts';
import { testStoneMigration } from './testStoneMigration.ts';

/**
 * The database's versions in order: entry n brings version n to n + 1.
 * Written as plain statements, since they must keep meaning what they meant; a released entry is never edited.
 */
export const migrations: readonly (readonly string[])[] = [
  // 1: photographs and the comparisons made of them
  [
    `CREATE TABLE photographs (
      id TEXT PRIMARY KEY,
      file_name TEXT NOT NULL,
      kind TEXT NOT NULL,
      width_px INTEGER NOT NULL CHECK (width_px > 0),
      height_px INTEGER NOT NULL CHECK (height_px > 0),
      byte_count INTEGER NOT NULL CHECK (byte_count > 0),
      added_at TEXT NOT NULL
    ) STRICT`,
    `CREATE TABLE comparisons (
      id TEXT PRIMARY KEY,
      title TEXT NOT NULL,
      created_at TEXT NOT NULL,
      state TEXT NOT NULL CHECK (state IN ('waiting', 'measuring', 'measured', 'refused', 'failed', 'cancelled')),
      sample INTEGER NOT NULL DEFAULT 0,
      request_json TEXT NOT NULL,
      finding TEXT,
      failure_json TEXT,
      result_key TEXT,
      queued_at TEXT NOT NULL,
      archived_at TEXT
    ) STRICT`,
    `CREATE INDEX comparisons_newest ON comparisons (created_at DESC, id DESC) WHERE archived_at IS NULL`,
    `CREATE INDEX comparisons_queued ON comparisons (queued_at) WHERE state IN ('waiting', 'measuring')`,
    `CREATE TABLE comparison_photographs (
      comparison_id TEXT NOT NULL REFERENCES comparisons (id) ON DELETE CASCADE,
      photograph_id TEXT NOT NULL REFERENCES photographs (id) ON DELETE RESTRICT,
      PRIMARY KEY (comparison_id, photograph_id)
    ) STRICT, WITHOUT ROWID`,
  ],
  // 2: a comparison that ends the program is not tried for ever
  [`ALTER TABLE comparisons ADD COLUMN interruptions INTEGER NOT NULL DEFAULT 0`],
  // 3: finding a comparison by any of its words
  [
    `ALTER TABLE comparisons ADD COLUMN search_text TEXT NOT NULL DEFAULT ''`,
    `UPDATE comparisons SET search_text = lower(title || ' ' || coalesce(finding, ''))`,
    // holds all that the search reads, so that it need not go through the requests, which are long
    `DROP INDEX comparisons_newest`,
    `CREATE INDEX comparisons_newest ON comparisons (created_at DESC, id DESC, search_text) WHERE archived_at IS NULL`,
  ],
  recordMigration,
  runMigration,
  kitMigration,
  pullMigration,
  editionMigration,
  foldMigration,
  studioMigration,
  inkMigration,
  materialMigration,
  suspectMigration,
  paperMigration,
  impressionMigration,
  pullSuspectMigration,
  testStoneMigration,
  deviceMigration,
  testPlanMigration,
  stoppedMigration,
  putByMigration,
  pullKindMigration,
  shutOutMigration,
  issueMigration,
];
