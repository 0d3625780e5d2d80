import { randomUUID } from 'node:crypto';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Puts a folder's own entries on the disk: a rename is only safe once this is done. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Makes a folder with all above it, each on the disk before this returns. */
export async function ensureFolder(folder: string): Promise<void> {
  const firstMade = await mkdir(folder, { recursive: true });
  if (firstMade === undefined) return;
  for (let made = folder; made.length >= firstMade.length; made = dirname(made)) {
    await syncFolder(dirname(made));
  }
}

/** Writes a new file and puts its bytes on the disk. Throws where the file is already there. */
export async function writeSynced(file: string, bytes: Uint8Array): Promise<void> {
  const handle = await open(file, 'wx');
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Renames a file or folder to its final name, replacing a file of that name, and puts the entry on the disk. */
export async function moveDurably(from: string, to: string): Promise<void> {
  await ensureFolder(dirname(to));
  await rename(from, to);
  await syncFolder(dirname(to));
}

/**
 * Writes a file so that its final name always means the whole content: a new file in `workFolder`
 * (same disk), fsync, rename, fsync of the folder. On an error the work file is removed and the error thrown.
 */
export async function writeDurably(workFolder: string, to: string, bytes: Uint8Array): Promise<void> {
  const working = join(workFolder, `${randomUUID()}.tmp`);
  try {
    await writeSynced(working, bytes);
    await moveDurably(working, to);
  } catch (error) {
    await rm(working, { force: true });
    throw error;
  }
}
