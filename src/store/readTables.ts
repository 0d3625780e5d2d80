import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { openPlainly, type SqliteHandle, sqliteCode } from './database/openDatabase.ts';
import type { DataFolder } from './files/dataFolder.ts';

/** A row as a record: names as the records have them, what was kept as JSON read, 0 and 1 as false and true where they mean that. */
export type ExportRecord = Readonly<Record<string, unknown>>;

/** A data folder at one moment, to be read table by table while others may write. */
export interface TableReader {
  /** Every table that holds records, caches and SQLite's own left out. */
  tables(): readonly string[];
  /** Rows one after another; never all of them in memory. */
  rows(table: string, order: string): IterableIterator<ExportRecord>;
  /** A file of a kept result as JSON; null where there is none. */
  result(key: string, name: string): ExportRecord | null;
  close(): void;
}

/** Worked out again at any time, said by the records themselves, or about who is let in. */
export const leftOutTables = [
  'run_folds',
  'stone_photographs',
  'work_photographs',
  'work_media',
  'comparison_photographs',
  'devices',
  'test_stone_photographs',
] as const;

const truths = new Set(['put_by', 'sample', 'attached', 'starting', 'halfway']);
const forSearch = new Set(['search_text', 'name_key']);

/**
 * Opens a data folder's database for reading, held at the moment of opening. Works in any thread, beside the server that
 * writes. Throws SQLite's error where it can't.
 */
export function openTables(folder: DataFolder): TableReader {
  const handle: SqliteHandle = openPlainly(folder.database, { readonly: true });
  handle.exec('BEGIN');
  return {
    tables: () =>
      handle
        .prepare<[], { name: string }>(`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`)
        .all()
        .map(({ name }) => name)
        .filter((name) => !name.startsWith('sqlite_') && !leftOutTables.some((one) => one === name)),
    *rows(table, order) {
      const statement = handle.prepare<[], Record<string, unknown>>(
        `SELECT * FROM "${table}" ORDER BY ${order}`,
      );
      for (const row of statement.iterate()) yield recordOf(row);
    },
    result(key, name) {
      try {
        const file = join(folder.results, key.slice(0, 2), key, name);
        return JSON.parse(readFileSync(file, 'utf8')) as ExportRecord;
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
        throw error;
      }
    },
    close: () => void handle.close(),
  };
}

/** Version of a folder's tables; `database-damaged` or `data-folder-unusable` where they can't be read. */
export function readVersion({ database, root }: DataFolder): Result<number> {
  try {
    const handle = openPlainly(database, { readonly: true });
    try {
      return ok(handle.pragma('user_version', { simple: true }) as number);
    } finally {
      handle.close();
    }
  } catch (error) {
    const code = sqliteCode(error);
    if (code === null) throw error;
    const damaged = /^SQLITE_(NOTADB|CORRUPT)/.test(code);
    const folder = damaged ? database : root;
    const why = (error as Error).message;
    return fail(failure(damaged ? 'database-damaged' : 'data-folder-unusable', { folder, why }));
  }
}

function recordOf(row: Readonly<Record<string, unknown>>): ExportRecord {
  const record: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(row)) {
    if (forSearch.has(name)) continue;
    if (name === 'record_json') continue;
    const field = name.replace(/_json$/, '').replace(/_(\w)/g, (_, letter: string) => letter.toUpperCase());
    if (name.endsWith('_json')) record[field] = value === null ? null : JSON.parse(value as string);
    else record[field] = truths.has(name) && value !== null ? value === 1 : value;
  }
  const kept = row.record_json === undefined ? {} : (JSON.parse(row.record_json as string) as object | null);
  // a row's own columns are what lists and saves go by
  return { ...kept, ...record };
}
