import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { type BackupManifest, type BackupPart, backupSchema } from '../../records/backup.ts';
import { BrokenArchive, type ReadEntry, readArchive } from './archive.ts';
import { digested } from './digest.ts';
import { judgeParts } from './judgeParts.ts';
import { isPartName, manifestName, openingName } from './parts.ts';
import { sealBytes, sealOf } from './seal.ts';

const chunkBytes = 1 << 20;
/** The opening and the manifest are held in memory: more than this is neither. A hundred thousand parts take 20 MB. */
const longestText = 40e6;

/** Takes one part's bytes, to their end. What it throws ends the reading. */
export type ReceivePart = (name: string, content: AsyncIterable<Uint8Array>) => Promise<void>;

/** What was met on the way through the archive. */
interface Walk {
  readonly found: BackupPart[];
  /** Null where it has another form; undefined where there is none. */
  manifest: BackupManifest | null | undefined;
  /** Why the archive could not be read to its end; null where it could. */
  broken: BrokenArchive | null;
}

/**
 * Reads a backup from end to end, hands over each part, then judges every byte: each part by the manifest, the rest by
 * the seal. What was handed over is worth nothing unless this succeeds.
 *
 * Fails with `file-missing`, `file-unreadable`, `backup-unknown`, `backup-newer`, `backup-cut-off` or `backup-damaged`,
 * which names the parts. Errors of `receive` are thrown.
 */
export async function readBackup(file: string, receive: ReceivePart): Promise<Result<BackupManifest>> {
  const size = await checkOpening(file);
  if (!size.ok) return size;
  const sealedBytes = Math.max(1, size.value - sealBytes);
  const whole = digested(createReadStream(file, { highWaterMark: chunkBytes, end: sealedBytes - 1 }));
  const walk: Walk = { found: [], manifest: undefined, broken: null };
  await walkThrough(whole.content, walk, receive);
  const last = walk.found.at(-1)?.name ?? openingName;
  const damaged = (why: string) => fail(failure('backup-damaged', { file, why }));
  if (walk.broken?.endsEarly) return fail(failure('backup-cut-off', { file, part: last }));
  if (walk.broken !== null) return damaged(`nothing can be read after ${last}`);
  if (walk.manifest === undefined) return fail(failure('backup-cut-off', { file, part: last }));
  if (walk.manifest === null) return damaged(`${manifestName} is not what was saved`);
  const wrong = judgeParts(walk.manifest.parts, walk.found);
  if (wrong !== null) return damaged(wrong);
  const seal = await readRange(file, sealedBytes, size.value);
  if (!seal.equals(await sealOf(whole.digest().sha256))) {
    return damaged('its parts are whole, but what binds them is not');
  }
  return ok(walk.manifest);
}

/** Whether the file begins as a backup does; said before anything else, as any file may be given. Gives its size. */
async function checkOpening(file: string): Promise<Result<number>> {
  const unknown = (why: string) => fail(failure('backup-unknown', { file, why }));
  try {
    const { size, isFile } = await stat(file).then((found) => ({ size: found.size, isFile: found.isFile() }));
    if (!isFile) return unknown('it is a folder');
    if (size === 0) return unknown('it is empty');
    const start = await readRange(file, 0, Math.min(size, 1024));
    if (!start.toString('latin1').startsWith(`${openingName}\0`)) return unknown('it begins like none');
    const version = /"schema": "stonetone\/backup\/(\d+)"/.exec(start.toString('latin1'))?.[1];
    return Number(version ?? 1) > 1 ? fail(failure('backup-newer', { file })) : ok(size);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR') return fail(failure('file-missing', { file }));
    return fail(failure('file-unreadable', { file, why: message }));
  }
}

async function walkThrough(
  bytes: AsyncIterable<Uint8Array>,
  walk: Walk,
  receive: ReceivePart,
): Promise<void> {
  try {
    for await (const entry of readArchive(bytes)) {
      if (entry.name === openingName || entry.name === manifestName) {
        const text = await textOf(entry);
        if (entry.name === manifestName) walk.manifest = manifestOf(text);
        continue;
      }
      if (!entry.isFile || !isPartName(entry.name)) {
        throw new BrokenArchive(new Error(`${entry.name} is no part of a backup`));
      }
      const reading = digested(entry.content);
      await receive(entry.name, reading.content);
      walk.found.push({ name: entry.name, ...reading.digest() });
    }
  } catch (error) {
    if (!(error instanceof BrokenArchive)) throw error;
    walk.broken = error;
  }
}

async function textOf(entry: ReadEntry): Promise<string> {
  if (entry.bytes > longestText) throw new BrokenArchive(new Error(`${entry.name} is too long`));
  const chunks: Uint8Array[] = [];
  for await (const chunk of entry.content) chunks.push(chunk);
  return Buffer.concat(chunks).toString('utf8');
}

/** The manifest of its text; null where it has another form. */
function manifestOf(text: string): BackupManifest | null {
  try {
    const json = JSON.parse(text) as BackupManifest;
    const usable =
      json.schema === backupSchema &&
      typeof json.databaseVersion === 'number' &&
      typeof json.madeAt === 'string' &&
      Array.isArray(json.concerns) &&
      json.parts.every(({ name, bytes, sha256 }) => isPartName(name) && bytes >= 0 && sha256.length === 64);
    return usable ? json : null;
  } catch {
    return null;
  }
}

async function readRange(file: string, from: number, to: number): Promise<Buffer> {
  const chunks: Buffer[] = [];
  if (to > from)
    for await (const chunk of createReadStream(file, { start: from, end: to - 1 })) chunks.push(chunk);
  return Buffer.concat(chunks);
}
