import { mkdir, readdir, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { placeFailure } from '../../store/backup/placeFailure.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { moveDurably } from '../../store/files/durableFiles.ts';
import { openTables } from '../../store/readTables.ts';
import { folderPlace } from './exportPlaces.ts';
import { readyToRead } from './readyToRead.ts';
import { type ExportCounts, writeExport } from './writeExport.ts';

/**
 * Writes all records of a data folder as CSV and JSON into a folder that is not there yet or empty, whole or not at all;
 * also while the folder is served.
 * Fails with `data-folder-missing`, `folder-taken`, `output-unwritable`, `disk-full`, or as reading the database does.
 */
export async function exportToFolder(dataFolder: string, to: string): Promise<Result<ExportCounts>> {
  const folder = dataFolderAt(dataFolder);
  const target = resolve(to);
  const working = join(dirname(target), `.${basename(target)}.part`);
  const ready = await readyToRead(folder);
  if (!ready.ok) return ready;
  try {
    const found = await readdir(target).then(
      ([first]) => first ?? null,
      (error: NodeJS.ErrnoException) => (error.code === 'ENOTDIR' ? 'a file has that name' : null),
    );
    if (found !== null) return fail(failure('folder-taken', { folder: target, found }));
    await rm(working, { recursive: true, force: true });
    await mkdir(working);
    const reader = openTables(folder);
    try {
      const counts = writeExport(reader, folderPlace(working));
      await moveDurably(working, target);
      return ok(counts);
    } finally {
      reader.close();
    }
  } catch (error) {
    return fail(placeFailure(error, dirname(target)));
  } finally {
    await rm(working, { recursive: true, force: true });
  }
}
