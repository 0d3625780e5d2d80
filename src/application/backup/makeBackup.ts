import { rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve, sep } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { BackupManifest, BackupPart } from '../../records/backup.ts';
import { databaseName, listPartFiles, type PartFile } from '../../store/backup/parts.ts';
import { placeFailure } from '../../store/backup/placeFailure.ts';
import { writeBackup } from '../../store/backup/writeBackup.ts';
import { besideDatabase, copyDatabase, type DatabaseCopy } from '../../store/database/copyDatabase.ts';
import { type DataFolder, dataFolderAt } from '../../store/files/dataFolder.ts';
import { moveDurably } from '../../store/files/durableFiles.ts';
import { engineVersion } from '../engineVersion.ts';

export interface BackupOrder {
  readonly dataFolder: string;
  /** The file to be made; its folder must be there, the file must not. */
  readonly to: string;
  readonly now: () => Date;
}

/**
 * Saves a data folder into one file, while others may write into it: the database as it stands when this begins, then
 * every photograph and result, then the list of them. The file gets its name when it is whole and on the disk.
 *
 * Fails with `data-folder-missing`, `file-taken`, `output-unwritable`, `disk-full`, `file-unreadable`,
 * `database-damaged`, `database-newer` or `data-folder-unusable`; nothing is left then.
 */
export async function makeBackup({ dataFolder, to, now }: BackupOrder): Promise<Result<BackupManifest>> {
  const folder = dataFolderAt(dataFolder);
  const target = resolve(to);
  const judged = await judgePlaces(folder, target);
  if (!judged.ok) return judged;
  const facts = { engine: engineVersion, madeAt: now().toISOString() };
  const part = join(dirname(target), `.${basename(target)}.part`);
  const database = join(dirname(target), `.${basename(target)}.database.part`);
  try {
    await sweep(database);
    // A place that takes no file is told before anything is copied.
    await writeFile(part, '');
    const copy = await copyDatabase(folder.database, database);
    if (!copy.ok) return copy;
    // Files are there before the rows that name them, and never go: listed after the rows, none can be missing.
    const files = [await databaseFile(database), ...(await listPartFiles(folder))];
    const manifest = await writeBackup(
      part,
      files,
      { ...facts, databaseVersion: copy.value.version },
      (parts) => concernsOf(copy.value, parts),
    );
    // Killed after the rename, nothing may be left beside it that no later run would sweep.
    await rm(database);
    await moveDurably(part, target);
    return ok(manifest);
  } catch (error) {
    return fail(placeFailure(error, dirname(target)));
  } finally {
    await rm(part, { force: true });
    await sweep(database);
  }
}

async function sweep(database: string): Promise<void> {
  for (const suffix of ['', ...besideDatabase]) await rm(database + suffix, { force: true });
}

async function judgePlaces(folder: DataFolder, target: string): Promise<Result<null>> {
  if (!(await isThere(folder.database))) {
    return fail(failure('data-folder-missing', { folder: folder.root, file: basename(folder.database) }));
  }
  if (await isThere(target)) return fail(failure('file-taken', { file: target }));
  if (target.startsWith(folder.root + sep)) {
    const why = 'it lies inside the data folder that is to be saved';
    return fail(failure('output-unwritable', { folder: dirname(target), why }));
  }
  return ok(null);
}

async function databaseFile(path: string): Promise<PartFile> {
  const { size, mtime } = await stat(path);
  return { name: databaseName, path, bytes: size, changedAt: mtime };
}

/** What a backup cannot mend: photographs that the database names and the folder has lost, or holds altered. */
function concernsOf(copy: DatabaseCopy, parts: readonly BackupPart[]): readonly string[] {
  const hashOf = new Map(parts.map(({ name, sha256 }) => [name, sha256]));
  return copy.photographs.flatMap(({ id, kind }) => {
    const name = `photographs/${id.slice(0, 2)}/${id}.${kind}`;
    const hash = hashOf.get(name);
    if (hash === undefined) return [`${name} is gone from the data folder.`];
    return hash === id ? [] : [`${name} is no longer what was kept: its bytes do not fit its name.`];
  });
}

async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
