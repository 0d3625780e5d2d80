import { readdir, stat } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { DataFolder } from '../files/dataFolder.ts';
import { UnreadablePart } from './placeFailure.ts';

/** First entry of a backup: what the file is. */
export const openingName = 'stonetone-backup.json';
/** Last entry before the seal: the list of its parts. */
export const manifestName = 'manifest.json';
/** The database inside a backup. */
export const databaseName = 'stonetone.sqlite';

const partName = /^(?:photographs|results)(?:\/[\w.-]+)+$/;

/** Whether a name may be one of a backup's parts: a place inside the data folder, never above or beside it. */
export function isPartName(name: string): boolean {
  if (name === databaseName) return true;
  return partName.test(name) && !name.split('/').some((word) => word === '.' || word === '..');
}

/** One file of the data folder that belongs into a backup, beside the database. */
export interface PartFile {
  readonly name: string;
  readonly path: string;
  readonly bytes: number;
  readonly changedAt: Date;
}

/**
 * Every photograph and every measured result, sorted by name. What the cache holds can be made again and stays out, as
 * does what is still coming in.
 */
export async function listPartFiles(folder: DataFolder): Promise<readonly PartFile[]> {
  const files: PartFile[] = [];
  for (const place of [folder.photographs, folder.results]) {
    const entries = await readdir(place, { recursive: true, withFileTypes: true }).catch((error) => {
      if (error.code === 'ENOENT') return [];
      throw new UnreadablePart(place, error);
    });
    for (const entry of entries) {
      if (!entry.isFile()) continue;
      const path = join(entry.parentPath, entry.name);
      const name = relative(folder.root, path).split(sep).join('/');
      if (!isPartName(name)) continue;
      const { size, mtime } = await stat(path);
      files.push({ name, path, bytes: size, changedAt: mtime });
    }
  }
  return files.sort((one, other) => (one.name < other.name ? -1 : 1));
}
