import { rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { ensureFolder } from './durableFiles.ts';

/** Where everything of one data folder lies. */
export interface DataFolder {
  readonly root: string;
  readonly database: string;
  readonly lock: string;
  /** Half-made files; emptied at every start. */
  readonly incoming: string;
  /** Photographs that are sent in pieces, while they are; in no backup. */
  readonly uploads: string;
  readonly photographs: string;
  readonly results: string;
  /** Can be made again from the photographs at any time. */
  readonly cache: string;
  /** The machine's own secrets for the network; in no backup. */
  readonly network: string;
}

/** Names the places of a data folder; touches nothing. */
export function dataFolderAt(folder: string): DataFolder {
  const root = resolve(folder);
  return {
    root,
    database: join(root, 'stonetone.sqlite'),
    lock: join(root, 'stonetone.lock'),
    incoming: join(root, 'incoming'),
    uploads: join(root, 'uploads'),
    photographs: join(root, 'photographs'),
    results: join(root, 'results'),
    cache: join(root, 'cache'),
    network: join(root, 'network'),
  };
}

/** Makes what is missing. Throws the file system's error where it cannot. */
export async function prepareDataFolder(folder: DataFolder): Promise<void> {
  for (const place of [folder.root, folder.uploads, folder.photographs, folder.results, folder.cache]) {
    await ensureFolder(place);
  }
}

/** Removes what an earlier run left half-made; only for the holder of the folder's lock. */
export async function sweepIncoming(folder: DataFolder): Promise<void> {
  await rm(folder.incoming, { recursive: true, force: true });
  await ensureFolder(folder.incoming);
}
