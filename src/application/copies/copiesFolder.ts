import { readFile, realpath, rm, stat, writeFile } from 'node:fs/promises';
import { isAbsolute, join, resolve, sep } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { placeFailure } from '../../store/backup/placeFailure.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { ensureFolder } from '../../store/files/durableFiles.ts';

/** Remembers beside the database where its copies go: asked when the database itself can't be. */
const rememberedIn = (dataFolder: string): string => join(dataFolderAt(dataFolder).root, 'copies.txt');
/** Second line of that file where no more are to be made. */
const stopped = 'stopped';

/** Where copies of a data folder went last, and whether they go on. */
export interface RememberedCopies {
  readonly folder: string;
  readonly stopped: boolean;
}

/**
 * Whether a folder that is there may take copies of a data folder: it takes a file, as is tried.
 * @returns the folder's path as it is to be kept; `output-unwritable` or `disk-full`, which say why, else
 */
export async function judgeCopiesFolder(dataFolder: string, folder: string): Promise<Result<string>> {
  const unusable = (why: string) => fail(failure('output-unwritable', { folder, why }, 'folder'));
  if (!isAbsolute(folder)) return unusable('it is no whole path, from the top of the disk on');
  const place = resolve(folder);
  const found = await stat(place).catch(() => null);
  if (found === null) return unusable('it is not there');
  if (!found.isDirectory()) return unusable('it is not a folder');
  const { root } = dataFolderAt(dataFolder);
  const real = await realpath(place).catch(() => place);
  const realRoot = await realpath(root).catch(() => root);
  if (`${real}${sep}`.startsWith(realRoot + sep)) {
    return unusable('it lies inside the data folder that is to be saved');
  }
  const tried = join(place, `.stonetone-try-${process.pid}`);
  try {
    await writeFile(tried, 'tried');
    return ok(place);
  } catch (error) {
    return fail({ ...placeFailure(error, folder), path: 'folder' });
  } finally {
    await rm(tried, { force: true }).catch(() => {});
  }
}

/**
 * Remembers where copies go, for the day on which they are needed; that none are made any more leaves the place known.
 * @returns `output-unwritable` or `disk-full` where the data folder does not take it
 */
export async function rememberCopies(
  dataFolder: string,
  { folder, stopped: none }: RememberedCopies,
): Promise<Result<null>> {
  const { root } = dataFolderAt(dataFolder);
  try {
    await ensureFolder(root);
    await writeFile(rememberedIn(dataFolder), `${folder}\n${none ? `${stopped}\n` : ''}`);
    return ok(null);
  } catch (error) {
    return fail(placeFailure(error, root));
  }
}

/** Where copies of a data folder went last; null where nobody said. */
export async function rememberedCopies(dataFolder: string): Promise<RememberedCopies | null> {
  const text = await readFile(rememberedIn(dataFolder), 'utf8').catch(() => '');
  const [folder = '', state = ''] = text.split('\n');
  return folder.trim() === '' ? null : { folder: folder.trim(), stopped: state.trim() === stopped };
}
