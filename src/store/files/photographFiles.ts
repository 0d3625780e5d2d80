import { join } from 'node:path';
import type { DataFolder } from './dataFolder.ts';

/** The photographs' bytes on disk, each under the hash of what it holds. They arrive by `moveDurably`. */
export interface PhotographFiles {
  /** Where a photograph's bytes lie. `id` is a SHA-256 in hexadecimal; anything else throws. */
  pathOf(id: string, kind: string): string;
}

const contentHash = /^[0-9a-f]{64}$/;

/** Throws unless the text is a SHA-256 in hexadecimal: the last guard before a name becomes a path. */
export function assertContentHash(text: string): void {
  if (!contentHash.test(text)) throw new Error('not a content hash');
}

/** Photograph files of a prepared data folder. */
export function photographFilesIn(folder: DataFolder): PhotographFiles {
  function pathOf(id: string, kind: string): string {
    assertContentHash(id);
    if (!/^[a-z0-9]{1,8}$/.test(kind)) throw new Error('not a kind of picture');
    return join(folder.photographs, id.slice(0, 2), `${id}.${kind}`);
  }
  return { pathOf };
}
