import { mkdir, readdir, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { BackupManifest } from '../../records/backup.ts';
import { placeFailure } from '../../store/backup/placeFailure.ts';
import { readBackup } from '../../store/backup/readBackup.ts';
import { restorePartsInto } from '../../store/backup/restoreParts.ts';
import { currentVersion } from '../../store/database/migrate.ts';
import { ensureFolder, moveDurably } from '../../store/files/durableFiles.ts';

/**
 * Puts a backup back as a data folder, which must not be there yet or be empty. Everything is written beside it, judged
 * whole, and gets its name by one rename. A database of an earlier version is brought up to date when it is next opened.
 *
 * Fails with `folder-taken`, `output-unwritable`, `disk-full`, `database-newer`, or as reading a backup does; the folder
 * is then as it was.
 */
export async function restoreBackup(file: string, dataFolder: string): Promise<Result<BackupManifest>> {
  const target = resolve(dataFolder);
  const working = join(dirname(target), `.${basename(target)}.restoring`);
  try {
    const taken = await holding(target);
    if (taken !== null) return fail(failure('folder-taken', { folder: target, found: taken }));
    await ensureFolder(dirname(target));
    await rm(working, { recursive: true, force: true });
    await mkdir(working);
    const parts = restorePartsInto(working);
    const manifest = await readBackup(file, parts.receive);
    if (!manifest.ok) return manifest;
    if (manifest.value.databaseVersion > currentVersion) {
      return fail(failure('database-newer', { folder: file }));
    }
    await parts.settle();
    await moveDurably(working, target);
    return ok(manifest.value);
  } catch (error) {
    return fail(placeFailure(error, dirname(target)));
  } finally {
    await rm(working, { recursive: true, force: true });
  }
}

/** Something that the folder holds; null where it is empty or not there. A file of that name holds itself. */
async function holding(folder: string): Promise<string | null> {
  try {
    return (await readdir(folder))[0] ?? null;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return null;
    if (code === 'ENOTDIR') return 'a file has that name';
    throw error;
  }
}
