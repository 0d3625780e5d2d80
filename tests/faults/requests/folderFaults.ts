import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { openPlainly } from '../../../src/store/database/openDatabase.ts';
import { dataFolderAt } from '../../../src/store/files/dataFolder.ts';

/** Logs of which a row has its place by a whole number from 1 on. */
const logs = [
  ['run_events', 'run_id'],
  ['ledger_entries', 'edition_id'],
  ['test_stone_events', 'test_stone_id'],
] as const;

/**
 * What is wrong in a data folder that nobody has open, in words: SQLite's own check, references that lead nowhere,
 * photographs whose bytes are not those that they are named by, files that no row knows, logs with gaps or out of
 * order, records that are no JSON, uploads left half-made. Empty when all is well.
 */
export async function folderFaults(dataFolder: string): Promise<readonly string[]> {
  const folder = dataFolderAt(dataFolder);
  const database = openPlainly(folder.database, { readonly: true });
  try {
    const faults: string[] = [];
    const rows = <Row>(text: string) => database.prepare(text).all() as Row[];
    for (const { integrity_check: said } of rows<{ integrity_check: string }>('PRAGMA integrity_check')) {
      if (said !== 'ok') faults.push(`integrity: ${said}`);
    }
    for (const row of rows<object>('PRAGMA foreign_key_check'))
      faults.push(`reference: ${JSON.stringify(row)}`);
    for (const [table, owner] of logs) {
      const broken = rows<{ owner: string; count: number; least: number; most: number }>(
        `SELECT ${owner} owner, count(*) count, min(sequence) least, max(sequence) most FROM ${table}
         GROUP BY ${owner} HAVING least <> 1 OR most <> count`,
      );
      for (const row of broken) faults.push(`${table} has gaps: ${JSON.stringify(row)}`);
    }
    for (const [table, owner] of logs.slice(0, 2)) {
      const backwards = rows<object>(
        `SELECT later.${owner}, later.sequence FROM ${table} later JOIN ${table} earlier
         ON earlier.${owner} = later.${owner} AND earlier.sequence = later.sequence - 1
         WHERE later.received_at < earlier.received_at`,
      );
      for (const row of backwards) faults.push(`${table} runs backwards: ${JSON.stringify(row)}`);
    }
    faults.push(...recordsWithoutJson(rows));
    const photographs = rows<{ id: string; kind: string; byte_count: number }>('SELECT * FROM photographs');
    faults.push(...(await photographFaults(folder.photographs, photographs)));
    const halfMade = await readdir(folder.incoming);
    if (halfMade.length > 0) faults.push(`half-made: ${halfMade.join(', ')}`);
    return faults;
  } finally {
    database.close();
  }
}

function recordsWithoutJson(rows: <Row>(text: string) => Row[]): string[] {
  const columns = rows<{ table: string; column: string }>(
    `SELECT t.name "table", c.name "column" FROM sqlite_schema t, pragma_table_info(t.name) c
     WHERE t.type = 'table' AND c.name LIKE '%\\_json' ESCAPE '\\'`,
  );
  return columns.flatMap(({ table, column }) => {
    const [broken] = rows<{ count: number }>(
      `SELECT count(*) count FROM ${table} WHERE ${column} IS NOT NULL AND NOT json_valid(${column})`,
    );
    return broken!.count === 0 ? [] : [`${table}.${column}: ${broken!.count} are no JSON`];
  });
}

async function photographFaults(
  folder: string,
  rows: readonly { readonly id: string; readonly kind: string; readonly byte_count: number }[],
): Promise<string[]> {
  const faults: string[] = [];
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = new Map(
    entries
      .filter((entry) => entry.isFile())
      .map((entry) => [entry.name, `${entry.parentPath}/${entry.name}`]),
  );
  for (const { id, kind, byte_count } of rows) {
    const file = files.get(`${id}.${kind}`);
    if (file === undefined) {
      faults.push(`photograph ${id} has no file`);
      continue;
    }
    files.delete(basename(file));
    const bytes = await readFile(file);
    if (createHash('sha256').update(bytes).digest('hex') !== id)
      faults.push(`photograph ${id} holds other bytes`);
    if (bytes.byteLength !== byte_count) faults.push(`photograph ${id} has another length than its row says`);
  }
  for (const file of files.values()) faults.push(`no row knows ${file}`);
  return faults;
}
