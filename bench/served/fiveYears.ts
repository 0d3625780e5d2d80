import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { openServices } from '../../src/application/openServices.ts';
import { saltreachClock, writeYear } from '../../src/sample/saltreach/year/writeYear.ts';
import { dataFolderAt } from '../../src/store/files/dataFolder.ts';
import { tellAgain } from './yearAgain.ts';

/** How much a busy studio leaves in five years. */
export interface FiveYears {
  /** Tellings of the sample's year: 16 works each. */
  readonly tellings: number;
  /** Taps that every run gets more than it has. */
  readonly tapsARun: number;
  /** Taps that the one longest run gets more. */
  readonly longest: number;
  readonly photographs: number;
  readonly comparisons: number;
}

export const busyStudio: FiveYears = {
  tellings: 20,
  tapsARun: 500,
  longest: 100_000,
  photographs: 5000,
  comparisons: 1500,
};

/** The run that gets the most taps, of that work. */
export const longestOf = 'saltreach-slack-water';

/** Writes such a data folder, closed properly. @returns what it holds, in words */
export async function writeFiveYears(dataFolder: string, years: FiveYears): Promise<string> {
  const clock = saltreachClock();
  const opened = await openServices({ dataFolder, largestBytes: 50e6, now: clock.now });
  if (!opened.ok) throw new Error(opened.error.message);
  await writeYear(opened.value, clock);
  await opened.value.close();
  const folder = dataFolderAt(dataFolder);
  tellAgain(folder.database, years.tellings);
  const database = new SqliteDatabase(folder.database);
  try {
    addTaps(database, years);
    addComparisons(database, years.comparisons);
    await addPhotographs(database, folder.photographs, years.photographs);
    const count = (table: string) => database.prepare(`SELECT count(*) FROM ${table}`).pluck().get();
    const tables = ['works', 'runs', 'run_events', 'pulls', 'photographs', 'comparisons'];
    return tables.map((table) => `${count(table)} ${table.replace('_', ' ')}`).join(', ');
  } finally {
    database.close();
  }
}

type Database = SqliteDatabase.Database;

/** More taps at the end of logs, 1.5 s apart: an etch that is kept moving. */
function addTaps(database: Database, { tapsARun, longest }: FiveYears): void {
  const runs = database.prepare<[], { id: string }>('SELECT id FROM runs').all();
  const longestRun = database
    .prepare<[string], { id: string }>(
      'SELECT id FROM runs WHERE work_id = ? ORDER BY started_at DESC, id DESC',
    )
    .get(longestOf)!.id;
  database.transaction(() => {
    for (const { id } of runs) tap(database, id, id === longestRun ? longest : tapsARun);
  })();
}

/** Adds so many taps at the end of one log. */
export function tap(database: Database, runId: string, count: number): void {
  database
    .prepare(
      `WITH RECURSIVE taps (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM taps WHERE n < @count),
         ending (last, at) AS (SELECT coalesce(max(sequence), 0),
           julianday(coalesce(max(received_at), '2026-01-01')) FROM run_events WHERE run_id = @runId),
         timed AS (SELECT last + n AS sequence,
           strftime('%Y-%m-%dT%H:%M:%fZ', at + n * 1.5 / 86400) AS at FROM taps, ending)
       INSERT INTO run_events SELECT @runId, sequence, 'more ' || sequence,
         CASE sequence % 10 WHEN 0 THEN 'laid' WHEN 9 THEN 'lifted' ELSE 'moved' END,
         at, at, at, 'P.R.', 'phone', '{"place":"place-' || (sequence / 10 % 4) || '"}' FROM timed`,
    )
    .run({ runId, count });
}

function addComparisons(database: Database, count: number): void {
  const columns = database
    .prepare<[], { name: string }>(`SELECT name FROM pragma_table_info('comparisons')`)
    .all()
    .map(({ name }) => `"${name}"`);
  const taken = columns.map((name) => (name === '"id"' ? `"id" || '~' || @n` : name));
  const again = database.prepare(
    `INSERT INTO comparisons (${columns.join(', ')}) SELECT ${taken.join(', ')} FROM comparisons WHERE sample = 1 LIMIT 1`,
  );
  const photographs = database.prepare(
    `INSERT INTO comparison_photographs SELECT comparison_id || '~' || @n, photograph_id FROM comparison_photographs
     WHERE comparison_id = (SELECT id FROM comparisons WHERE sample = 1 ORDER BY length(id) LIMIT 1)`,
  );
  database.transaction(() => {
    for (let n = 1; n <= count; n++) {
      again.run({ n });
      photographs.run({ n });
    }
  })();
}

/** Rows of photographs with files as small as can be: a start must not depend on what is in them. */
async function addPhotographs(database: Database, folder: string, count: number): Promise<void> {
  const add = database.prepare(
    `INSERT INTO photographs (id, file_name, kind, width_px, height_px, byte_count, added_at)
     VALUES (?, ?, 'jpeg', 4000, 3000, ?, ?)`,
  );
  const at = new Date().toISOString();
  for (let n = 0; n < count; n++) {
    const bytes = Buffer.alloc(4096, `photograph ${n} `);
    const id = createHash('sha256').update(bytes).digest('hex');
    await mkdir(join(folder, id.slice(0, 2)), { recursive: true });
    await writeFile(join(folder, id.slice(0, 2), `${id}.jpeg`), bytes);
    add.run(id, `photograph-${n}.jpg`, bytes.byteLength, at);
  }
}
