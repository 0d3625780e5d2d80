import { mkdir, open, rename } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Puts a folder's own entries on the disk: a rename is only safe once this is done. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Puts the bytes of a file that is already written on the disk. */
export async function syncFile(file: string): Promise<void> {
  const handle = await open(file, 'r+');
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
