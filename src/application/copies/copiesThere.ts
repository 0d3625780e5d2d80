import { readdir, stat, statfs } from 'node:fs/promises';
import { join } from 'node:path';
import type { CopyCheck, DailyCopy } from '../../records/copies.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { copyName, dayOfCopy, newCopyName } from './copyNames.ts';

/** The daily copies in a folder, newest first; none where it can't be read. */
export async function copiesThere(
  folder: string,
  checks: ReadonlyMap<string, CopyCheck>,
): Promise<readonly DailyCopy[]> {
  const days = (await readdir(folder).catch(() => [])).flatMap((name) => dayOfCopy(name) ?? []);
  const found: DailyCopy[] = [];
  for (const day of days.sort().reverse()) {
    const file = join(folder, copyName(day));
    const size = await bytesOf(file);
    if (size !== null) found.push({ day, file, bytes: size, check: checks.get(file) ?? null });
  }
  return found;
}

/** How much of a day's copy is written; null while there is nothing of it yet. */
export async function bytesWritten(folder: string, day: string): Promise<number | null> {
  return (
    (await bytesOf(join(folder, `.${newCopyName(day)}.part`))) ??
    (await bytesOf(join(folder, `.${copyName(day)}.part`)))
  );
}

/** What a folder's disk has left, bytes, and whether it is the one that holds the data; null where nobody can tell. */
export async function diskOf(
  dataFolder: string,
  folder: string,
): Promise<{ readonly freeBytes: number | null; readonly sameDisk: boolean | null }> {
  const room = await statfs(folder).catch(() => null);
  const places = await Promise.all(
    [dataFolderAt(dataFolder).root, folder].map((place) => stat(place).catch(() => null)),
  );
  const [data, copies] = places;
  return {
    freeBytes: room === null ? null : room.bavail * room.bsize,
    sameDisk: data && copies ? data.dev === copies.dev : null,
  };
}

async function bytesOf(file: string): Promise<number | null> {
  return stat(file).then(
    ({ size }) => size,
    () => null,
  );
}
