import { access, chmod, constants, copyFile } from 'node:fs/promises';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { currentVersion } from './migrate.ts';
import { openPlainly, type SqliteHandle, sqliteCode } from './openDatabase.ts';

/** A copy that was made, as it was judged. */
export interface DatabaseCopy {
  /** Version of its tables. */
  readonly version: number;
  /** Id and kind of every photograph that it names. */
  readonly photographs: readonly { readonly id: string; readonly kind: string }[];
}

/** Pages copied before others get their turn. */
const pagesAtOnce = 2000;

/** What SQLite may leave beside a copy that was broken off. */
export const besideDatabase = ['-journal', '-wal', '-shm'] as const;

/**
 * Copies a database, as it stands at this moment, into a new single file, while others go on writing; then judges the
 * copy whole: its pages, its rows and what they refer to.
 *
 * Fails with `database-damaged`, which names the file, `database-newer` or `data-folder-unusable`. Where the copy cannot
 * be written, the error of SQLite or of the file system is thrown.
 */
export async function copyDatabase(from: string, to: string): Promise<Result<DatabaseCopy>> {
  let source: SqliteHandle | null = null;
  try {
    source = openPlainly(from, { readonly: true });
    // Holding one moment of the database: a copy that another process writes into would begin again for ever.
    source.exec('BEGIN');
    source.prepare('SELECT count(*) FROM sqlite_schema').get();
  } catch (error) {
    source?.close();
    const folderIsFixed = /^SQLITE_(READONLY|CANTOPEN)/.test(sqliteCode(error) ?? '');
    return folderIsFixed && (await isReadable(from)) ? copyFixed(from, to) : failSource(from, error);
  }
  try {
    await source.backup(to, { progress: () => pagesAtOnce });
    return judgeCopy(from, to);
  } catch (error) {
    if (/^SQLITE_(NOTADB|CORRUPT)/.test(sqliteCode(error) ?? '')) return failSource(from, error);
    throw error;
  } finally {
    source.close();
  }
}

/**
 * Copies the bytes of a database in a folder that can only be read, such as a failing disk: SQLite itself would write
 * beside it. Whoever has it open holds a file there that lets SQLite read, so here nobody does.
 */
async function copyFixed(from: string, to: string): Promise<Result<DatabaseCopy>> {
  for (const suffix of ['', '-wal']) {
    if (!(await isReadable(from + suffix))) continue;
    await copyFile(from + suffix, to + suffix);
    // The copy takes over that it can't be written.
    await chmod(to + suffix, 0o600);
  }
  try {
    return judgeCopy(from, to);
  } catch (error) {
    return failSource(from, error);
  }
}

async function isReadable(file: string): Promise<boolean> {
  return access(file, constants.R_OK).then(
    () => true,
    () => false,
  );
}

function judgeCopy(from: string, to: string): Result<DatabaseCopy> {
  const copy = openPlainly(to, { readonly: false });
  try {
    // One file, without a log beside it; whoever opens it next turns the log on again.
    copy.pragma('journal_mode = DELETE');
    const damage = copy.pragma('integrity_check(1)', { simple: true });
    if (damage !== 'ok') return damaged(from, String(damage).split('\n').at(-1)!);
    const [orphan] = copy.pragma('foreign_key_check') as readonly { table: string; parent: string }[];
    if (orphan) return damaged(from, `a row of ${orphan.table} names one of ${orphan.parent} that is gone`);
    const version = copy.pragma('user_version', { simple: true }) as number;
    if (version === 0) return damaged(from, 'it holds no tables of Stonetone');
    if (version > currentVersion) return fail(failure('database-newer', { folder: from }));
    const photographs = copy
      .prepare<[], { id: string; kind: string }>('SELECT id, kind FROM photographs ORDER BY id')
      .all();
    return ok({ version, photographs });
  } finally {
    copy.close();
  }
}

function damaged(file: string, why: string): Result<never> {
  return fail(failure('database-damaged', { folder: file, why }));
}

function failSource(file: string, error: unknown): Result<never> {
  const code = sqliteCode(error);
  if (code === null) throw error;
  const why = (error as Error).message;
  if (/^SQLITE_(NOTADB|CORRUPT)/.test(code)) return damaged(file, why);
  return fail(failure('data-folder-unusable', { folder: file, why }));
}
