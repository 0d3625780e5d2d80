import { randomUUID } from 'node:crypto';
import { access, mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { ComparisonRecord } from '../../records/comparison.ts';
import type { DataFolder } from './dataFolder.ts';
import { moveDurably, syncFolder, writeSynced } from './durableFiles.ts';
import { assertContentHash } from './photographFiles.ts';

/** What measurements left behind, one folder per result key (a hash of all that the result depends on). */
export interface ResultFiles<Kept = ComparisonRecord> {
  has(key: string): Promise<boolean>;
  /** Keeps a result whole or not at all; one that is already kept stays as it is. */
  keep(key: string, record: Kept, files: ReadonlyMap<string, Uint8Array>): Promise<void>;
  /** Names of the files of a kept result, sorted; empty where there is none. */
  names(key: string): Promise<readonly string[]>;
  /** The kept record; null where there is none. */
  record(key: string): Promise<Kept | null>;
  /** Where one file of a result lies; null for a name that the result does not have. */
  pathOf(key: string, name: string): Promise<string | null>;
}

function isMissing(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ENOENT';
}

/**
 * Result files of a prepared data folder.
 * @param recordName of the file that holds the record: a result is there once this file is.
 */
export function resultFilesIn<Kept>(folder: DataFolder, recordName: string): ResultFiles<Kept> {
  function folderOf(key: string): string {
    assertContentHash(key);
    return join(folder.results, key.slice(0, 2), key);
  }
  async function has(key: string): Promise<boolean> {
    return access(join(folderOf(key), recordName)).then(
      () => true,
      () => false,
    );
  }
  async function names(key: string): Promise<readonly string[]> {
    try {
      return (await readdir(folderOf(key))).sort();
    } catch (error) {
      if (isMissing(error)) return [];
      throw error;
    }
  }
  return {
    has,
    names,
    async keep(key, record, files) {
      if (await has(key)) return;
      const working = join(folder.incoming, randomUUID());
      try {
        await mkdir(working);
        for (const [name, bytes] of files) {
          if (name !== recordName) await writeSynced(join(working, name), bytes);
        }
        await writeSynced(join(working, recordName), Buffer.from(`${JSON.stringify(record, null, 1)}\n`));
        await syncFolder(working);
        await moveDurably(working, folderOf(key));
      } catch (error) {
        await rm(working, { recursive: true, force: true });
        throw error;
      }
    },
    async record(key) {
      try {
        return JSON.parse(await readFile(join(folderOf(key), recordName), 'utf8')) as Kept;
      } catch (error) {
        if (isMissing(error)) return null;
        throw error;
      }
    },
    async pathOf(key, name) {
      return (await names(key)).includes(name) ? join(folderOf(key), name) : null;
    },
  };
}
