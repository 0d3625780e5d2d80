import { randomFillSync } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { dataFolderAt } from '../../src/store/files/dataFolder.ts';
import { longestOf, tap } from './fiveYears.ts';

/**
 * Leaves a data folder as a power cut would, in a process of its own that ends itself: a long write-ahead log that nobody folded
 * in, uploads half-made, and, of the one longest log, taps that nothing kept knows of.
 */
const [dataFolder, logBytes, uploads, uploadBytes] = process.argv.slice(2) as [
  string,
  string,
  string,
  string,
];
const folder = dataFolderAt(dataFolder);
for (let n = 0; n < Number(uploads); n++) {
  const place = join(folder.incoming, `half-made-${n}`);
  mkdirSync(place, { recursive: true });
  writeFileSync(join(place, 'received'), randomFillSync(Buffer.alloc(Number(uploadBytes))));
}
const database = new SqliteDatabase(folder.database);
database.pragma('journal_mode = WAL');
database.pragma('wal_autocheckpoint = 0');
const runs = database
  .prepare<[string], { id: string }>(
    `SELECT id FROM runs ORDER BY work_id = ? DESC, started_at DESC, id DESC LIMIT 40`,
  )
  .all(longestOf);
const pageBytes = 4096;
for (let written = 0, turn = 0; written < Number(logBytes); turn++) {
  tap(database, runs[turn % runs.length]!.id, 20);
  written += 6 * pageBytes;
}
process.kill(process.pid, 'SIGKILL');
