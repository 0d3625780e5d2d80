import { randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotographUpload } from '../../records/photographUpload.ts';
import type { DataFolder } from './dataFolder.ts';
import { moveDurably, writeSynced } from './durableFiles.ts';
import { assertContentHash } from './photographFiles.ts';

/** What is kept beside the bytes of a photograph that is sent in pieces. */
export interface StoredUpload extends Omit<PhotographUpload, 'receivedBytes' | 'endsAt'> {
  /** The device that sends it; null for this machine. */
  readonly owner: string | null;
}

/**
 * Photographs that are sent in pieces, a folder each under the upload's id (64 hexadecimal digits; anything else
 * throws). The length of the bytes is how far one has come, so that nothing else need be true after a fall.
 */
export interface UploadFiles {
  all(): Promise<readonly StoredUpload[]>;
  find(id: string): Promise<StoredUpload | null>;
  /** Puts an upload in place that is not there yet, with no bytes. */
  add(upload: StoredUpload): Promise<void>;
  /** Replaces what is known of one. */
  save(upload: StoredUpload): Promise<void>;
  receivedBytes(id: string): Promise<number>;
  /** Where its bytes lie. */
  bytesPath(id: string): string;
  dropBytes(id: string): Promise<void>;
  drop(id: string): Promise<void>;
}

const told = 'upload.json';
const bytes = 'bytes';

/** Uploads of a prepared data folder. */
export function uploadFilesIn(folder: DataFolder): UploadFiles {
  function placeOf(id: string): string {
    assertContentHash(id);
    return join(folder.uploads, id);
  }
  async function find(id: string): Promise<StoredUpload | null> {
    try {
      return JSON.parse(await readFile(join(placeOf(id), told), 'utf8')) as StoredUpload;
    } catch (error) {
      if (isMissing(error)) return null;
      throw error;
    }
  }
  const written = (upload: StoredUpload) => Buffer.from(JSON.stringify(upload));
  return {
    find,
    async all() {
      const found = await Promise.all((await readdir(folder.uploads)).map(find));
      return found.filter((upload) => upload !== null);
    },
    async add(upload) {
      const made = join(folder.incoming, randomUUID());
      await mkdir(made);
      await writeSynced(join(made, told), written(upload));
      await writeSynced(join(made, bytes), new Uint8Array());
      await moveDurably(made, placeOf(upload.id));
    },
    async save(upload) {
      const made = join(folder.incoming, randomUUID());
      await writeSynced(made, written(upload));
      await moveDurably(made, join(placeOf(upload.id), told));
    },
    async receivedBytes(id) {
      try {
        return (await stat(join(placeOf(id), bytes))).size;
      } catch (error) {
        if (isMissing(error)) return 0;
        throw error;
      }
    },
    bytesPath: (id) => join(placeOf(id), bytes),
    dropBytes: (id) => rm(join(placeOf(id), bytes), { force: true }),
    drop: (id) => rm(placeOf(id), { recursive: true, force: true }),
  };
}

function isMissing(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ENOENT';
}
