import { createHash, randomUUID } from 'node:crypto';
import { readdir, readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { ensureFolder, moveDurably, writeSynced } from '../../../store/files/durableFiles.ts';

/** Where parts of readings lie: kept ones, and half-written ones, which the next start removes. */
export interface PartsPlace {
  readonly kept: string;
  readonly incoming: string;
}

/** The place of parts in a data folder. */
export function partsPlaceIn({
  cache,
  incoming,
}: {
  readonly cache: string;
  readonly incoming: string;
}): PartsPlace {
  return { kept: join(cache, 'patches'), incoming };
}

/** Parts of readings that a later one can take over. A cache: what is gone or damaged is worked out again. */
export interface KeptParts {
  /** The part of that name; null where none is kept. */
  known<Part>(key: string): Promise<Part | null>;
  /** Keeps a part: plain values and typed arrays over memory of their own. */
  keep(key: string, part: unknown): Promise<void>;
}

/** So many are kept, each about a megabyte; those that were written first go first. */
const most = 60;

/** The parts kept in a folder; null: none are kept. */
export function keptPartsIn(place: PartsPlace | null): KeptParts {
  if (place === null) return { known: async () => null, keep: async () => {} };
  const { kept, incoming } = place;
  return {
    known: <Part>(key: string) =>
      readFile(join(kept, key)).then(
        (bytes) => readPart<Part>(bytes),
        () => null,
      ),
    async keep(key, part) {
      const working = join(incoming, randomUUID());
      await ensureFolder(incoming);
      await writeSynced(working, serialize(part));
      await moveDurably(working, join(kept, key));
      await dropOldest(kept);
    },
  };
}

function readPart<Part>(bytes: Uint8Array): Part | null {
  try {
    return deserialize(bytes) as Part;
  } catch {
    return null;
  }
}

async function dropOldest(folder: string): Promise<void> {
  const names = await readdir(folder);
  if (names.length <= most) return;
  const aged = await Promise.all(
    names.map(async (name) => ({ name, at: (await stat(join(folder, name))).mtimeMs })),
  );
  const oldest = aged.sort((a, b) => a.at - b.at).slice(0, names.length - most);
  for (const { name } of oldest) await rm(join(folder, name), { force: true });
}

/** Names a part by all that it depends on. @returns SHA-256, hexadecimal */
export function partKey(...dependsOn: readonly unknown[]): string {
  return createHash('sha256').update(JSON.stringify(dependsOn)).digest('hex');
}

/** Names a file by its bytes. @returns SHA-256, hexadecimal */
export function bytesKey(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
