import SqliteDatabase from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { currentVersion, databaseVersion, migrate } from './migrate.ts';
import type { Tables } from './tables.ts';

/** An SQLite file, open and at the current version. */
export interface OpenDatabase {
  readonly database: Kysely<Tables>;
  /** Folds the write-ahead log into the file and closes it. */
  close(): Promise<void>;
}

/** Opens the raw file: write-ahead log, every commit on the disk before it is acknowledged, foreign keys held. */
function openFile(file: string): SqliteDatabase.Database {
  const handle = new SqliteDatabase(file, { timeout: 5000 });
  try {
    handle.pragma('journal_mode = WAL');
    handle.pragma('synchronous = FULL');
    handle.pragma('foreign_keys = ON');
    return handle;
  } catch (error) {
    handle.close();
    throw error;
  }
}

/**
 * Opens or makes the database file and brings it to the current version.
 * Fails with `database-damaged`, `database-newer` or `data-folder-unusable`.
 */
export async function openDatabase(file: string): Promise<Result<OpenDatabase>> {
  try {
    const handle = openFile(file);
    const damage = handle.pragma('quick_check(1)', { simple: true });
    if (damage !== 'ok') {
      handle.close();
      return fail(failure('database-damaged', { folder: file, why: String(damage) }));
    }
    const database = new Kysely<Tables>({ dialect: new SqliteDialect({ database: handle }) });
    if ((await databaseVersion(database)) > currentVersion) {
      await database.destroy();
      return fail(failure('database-newer', { folder: file }));
    }
    await migrate(database);
    return ok({ database, close: () => database.destroy() });
  } catch (error) {
    if (!(error instanceof SqliteDatabase.SqliteError)) throw error;
    const damaged = error.code.startsWith('SQLITE_NOTADB') || error.code.startsWith('SQLITE_CORRUPT');
    return fail(
      failure(damaged ? 'database-damaged' : 'data-folder-unusable', { folder: file, why: error.message }),
    );
  }
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
