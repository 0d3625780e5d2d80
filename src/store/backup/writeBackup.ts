import { createReadStream } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { type BackupManifest, type BackupPart, backupSchema } from '../../records/backup.ts';
import { type ArchiveEntry, openArchive } from './archive.ts';
import { digested } from './digest.ts';
import { manifestName, openingName, type PartFile } from './parts.ts';
import { UnreadablePart } from './placeFailure.ts';
import { sealOf } from './seal.ts';

/** Bytes read at once. */
const chunkBytes = 1 << 20;

/** What is known of a backup before its parts are read. */
export type BackupFacts = Omit<BackupManifest, 'schema' | 'parts' | 'concerns'>;

/**
 * Writes a backup of these files, in their order, and puts it on the disk. Reads each file once; memory does not grow
 * with their sizes. `concernsOf` judges the finished list; what it says is kept in the manifest.
 * Throws the file system's error where it cannot write, `UnreadablePart` where it cannot read.
 */
export async function writeBackup(
  to: string,
  files: readonly PartFile[],
  facts: BackupFacts,
  concernsOf: (parts: readonly BackupPart[]) => readonly string[],
): Promise<BackupManifest> {
  const parts: BackupPart[] = [];
  let manifest: BackupManifest | null = null;
  async function* entries(): AsyncIterable<ArchiveEntry> {
    yield textEntry(openingName, { schema: backupSchema, engine: facts.engine, madeAt: facts.madeAt });
    for (const { name, path, bytes, changedAt } of files) {
      const reading = digested(contentOf(path));
      yield { name, bytes, changedAt, content: reading.content };
      parts.push({ name, ...reading.digest() });
    }
    manifest = { schema: backupSchema, ...facts, parts, concerns: concernsOf(parts) };
    yield textEntry(manifestName, manifest);
  }
  const handle = await open(to, 'w');
  try {
    const whole = digested(openArchive(entries()));
    for await (const chunk of whole.content) await writeWhole(handle, chunk);
    await writeWhole(handle, await sealOf(whole.digest().sha256));
    await handle.sync();
  } finally {
    await handle.close();
  }
  return manifest!;
}

async function* contentOf(path: string): AsyncIterable<Uint8Array> {
  try {
    for await (const chunk of createReadStream(path, { highWaterMark: chunkBytes })) yield chunk;
  } catch (error) {
    throw new UnreadablePart(path, error);
  }
}

function textEntry(name: string, json: object): ArchiveEntry {
  const text = Buffer.from(`${JSON.stringify(json, null, 1)}\n`);
  async function* content() {
    yield text;
  }
  return { name, bytes: text.byteLength, changedAt: new Date(0), content: content() };
}

/** One write may take less than it was given where a disk is nearly full. */
async function writeWhole(handle: FileHandle, bytes: Uint8Array): Promise<void> {
  for (let done = 0; done < bytes.byteLength; ) {
    done += (await handle.write(bytes, done)).bytesWritten;
  }
}
