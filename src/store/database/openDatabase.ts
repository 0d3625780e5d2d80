import SqliteDatabase from 'better-sqlite3';
import { Kysely, sql } from 'kysely';
import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { currentVersion, databaseVersion, migrate } from './migrate.ts';
import { sqliteDialect } from './sqliteDialect.ts';
import type { Tables } from './tables.ts';

/** An SQLite file, open. */
export interface OpenDatabase {
  readonly database: Kysely<Tables>;
  /** Folds the write-ahead log into the file and closes it. */
  close(): Promise<void>;
}

/**
 * Opens the file as it is: write-ahead log, every commit on the disk before it is acknowledged, foreign keys held.
 * Throws SQLite's error where it is no database.
 */
export function openFile(file: string): OpenDatabase {
  const handle = new SqliteDatabase(file, { timeout: 5000 });
  try {
    handle.pragma('journal_mode = WAL');
    handle.pragma('synchronous = FULL');
    handle.pragma('foreign_keys = ON');
  } catch (error) {
    handle.close();
    throw error;
  }
  const database = new Kysely<Tables>({ dialect: sqliteDialect(handle) });
  return { database, close: () => database.destroy() };
}

async function bringUpToDate({ database }: OpenDatabase, file: string): Promise<Failure | null> {
  const { rows } = await sql<{ quick_check: string }>`PRAGMA quick_check(1)`.execute(database);
  const damage = rows[0]!.quick_check;
  if (damage !== 'ok') return failure('database-damaged', { folder: file, why: damage });
  if ((await databaseVersion(database)) > currentVersion) return failure('database-newer', { folder: file });
  await migrate(database);
  return null;
}

/**
 * Opens or makes the database file and brings it to the current version.
 * Fails with `database-damaged`, `database-newer` or `data-folder-unusable`.
 */
export async function openDatabase(file: string): Promise<Result<OpenDatabase>> {
  let opened: OpenDatabase | null = null;
  try {
    opened = openFile(file);
    const fault = await bringUpToDate(opened, file);
    if (fault === null) return ok(opened);
    await opened.close();
    return fail(fault);
  } catch (error) {
    await opened?.close();
    return fail(openingFailure(file, error));
  }
}

/** Opens a file that is there, of the current version, for reading alone. Fails as `openDatabase` does. */
export function openToRead(file: string): Result<OpenDatabase> {
  try {
    const database = new Kysely<Tables>({ dialect: sqliteDialect(openPlainly(file, { readonly: true })) });
    return ok({ database, close: () => database.destroy() });
  } catch (error) {
    return fail(openingFailure(file, error));
  }
}

/** What SQLite's error says of a file; any other error is thrown on. */
function openingFailure(file: string, error: unknown): Failure {
  if (!(error instanceof SqliteDatabase.SqliteError)) throw error;
  const damaged = /^SQLITE_(NOTADB|CORRUPT)/.test(error.code);
  const code = damaged ? 'database-damaged' : 'data-folder-unusable';
  return failure(code, { folder: file, why: error.message });
}

/** An SQLite file as the library opens it. */
export type SqliteHandle = SqliteDatabase.Database;

/** Opens a file that is there, to be read or changed by plain statements. Throws SQLite's error where it cannot. */
export function openPlainly(file: string, { readonly }: { readonly readonly: boolean }): SqliteHandle {
  return new SqliteDatabase(file, { readonly, fileMustExist: true, timeout: 5000 });
}

/** SQLite's own code of an error, such as `SQLITE_FULL`; null for any other error. */
export function sqliteCode(error: unknown): string | null {
  return error instanceof SqliteDatabase.SqliteError ? error.code : null;
}

/**
 * Takes a lock on a file that the operating system gives back when this process ends, however it ends.
 * Returns what gives it back before that; null where another process holds it.
 */
export function takeLock(file: string): (() => void) | null {
  const handle = new SqliteDatabase(file, { timeout: 0 });
  try {
    handle.pragma('locking_mode = EXCLUSIVE');
    handle.exec('BEGIN EXCLUSIVE');
    return () => void handle.close();
  } catch (error) {
    handle.close();
    if (error instanceof SqliteDatabase.SqliteError && error.code.startsWith('SQLITE_BUSY')) return null;
    throw error;
  }
}
