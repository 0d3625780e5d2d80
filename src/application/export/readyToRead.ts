import { stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { currentVersion } from '../../store/database/migrate.ts';
import type { DataFolder } from '../../store/files/dataFolder.ts';
import { readVersion } from '../../store/readTables.ts';

/** Whether a data folder's records can be read by this program: its tables must be of this version. */
export async function readyToRead(folder: DataFolder): Promise<Result<null>> {
  const there = await stat(folder.database).catch(() => null);
  const file = basename(folder.database);
  if (there === null) return fail(failure('data-folder-missing', { folder: folder.root, file }));
  const version = readVersion(folder);
  if (!version.ok) return version;
  if (version.value > currentVersion) return fail(failure('database-newer', { folder: folder.root }));
  if (version.value < currentVersion) {
    const why = 'it was written by an earlier version: serve it once with this one';
    return fail(failure('data-folder-unusable', { folder: folder.root, why }));
  }
  return ok(null);
}
