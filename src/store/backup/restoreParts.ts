import { createWriteStream } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { syncFile, syncFolder } from '../files/durableFiles.ts';
import type { ReceivePart } from './readBackup.ts';

/** A folder that parts are written into. */
export interface RestoredParts {
  readonly receive: ReceivePart;
  /** Puts every part and every folder's own entries on the disk; to be called once, after the last part. */
  settle(): Promise<void>;
}

/** So many files are put on the disk side by side: it writes them in its own order, and waits for none. */
const syncedAtOnce = 16;

/** Writes parts below a folder that is there already. Their names must have been judged. Throws the file system's errors. */
export function restorePartsInto(root: string): RestoredParts {
  const folders = new Set([root]);
  const files: string[] = [];
  return {
    async receive(name, content) {
      const file = join(root, name);
      await mkdir(dirname(file), { recursive: true });
      for (let above = dirname(file); above !== root; above = dirname(above)) folders.add(above);
      await pipeline(content, createWriteStream(file, { flags: 'wx' }));
      files.push(file);
    },
    async settle() {
      const turn = files.values();
      const inTurn = async () => {
        for (const file of turn) await syncFile(file);
      };
      await Promise.all(Array.from({ length: syncedAtOnce }, inTurn));
      for (const folder of folders) await syncFolder(folder);
    },
  };
}
