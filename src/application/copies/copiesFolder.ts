import { readFile, stat, writeFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { ensureFolder } from '../../store/files/durableFiles.ts';

/** Remembers beside the database where its copies go: asked when the database itself can't be. */
const rememberedIn = (dataFolder: string): string => join(dataFolderAt(dataFolder).root, 'copies.txt');

/**
 * Whether a folder that is there may take copies of a data folder, and remembers it for the day on which they are needed.
 * @returns `output-unwritable` where it is not there, is no folder, or lies inside the data folder
 */
export async function checkCopiesFolder(dataFolder: string, folder: string): Promise<Result<null>> {
  const { root } = dataFolderAt(dataFolder);
  const unusable = (why: string) => fail(failure('output-unwritable', { folder, why }));
  if (folder === root || folder.startsWith(root + sep)) {
    return unusable('it lies inside the data folder that is to be saved');
  }
  const found = await stat(folder).catch(() => null);
  if (found === null) return unusable('it is not there');
  if (!found.isDirectory()) return unusable('it is not a folder');
  await ensureFolder(root);
  // a hint alone: a folder that can't take it is told of when it is opened
  await writeFile(rememberedIn(dataFolder), `${folder}\n`).catch(() => {});
  return ok(null);
}

/** Where copies of a data folder went last; null where nobody said. */
export async function copiesFolderOf(dataFolder: string): Promise<string | null> {
  const text = await readFile(rememberedIn(dataFolder), 'utf8').catch(() => '');
  return text.trim() === '' ? null : text.trim();
}
