import { randomUUID } from 'node:crypto';
import { mkdir, open, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { PhotographEntry } from '../records/comparisonEntry.ts';
import { moveDurably, syncFile } from '../store/files/durableFiles.ts';
import type { Store } from '../store/openStore.ts';
import { photographEntryOf } from './photographEntryOf.ts';
import { type IngestedPhotograph, uploadNames } from './pictures/ingestPhotograph.ts';
import type { PictureDesk } from './pictures/pictureDesk.ts';
import { shownFileName } from './shownFileName.ts';

export interface Upload {
  /** As the person's machine calls it; only its last part is kept, and it never becomes a path. */
  readonly fileName: string;
  /** The bytes as they arrive; an error while reading means that the upload broke off. */
  readonly content: AsyncIterable<Uint8Array>;
}

export interface AddedPhotograph {
  readonly photograph: PhotographEntry;
  /** False where the same photograph was here before. */
  readonly added: boolean;
}

export interface AddPhotographParts {
  readonly store: Pick<Store, 'folder' | 'photographs' | 'photographFiles'>;
  readonly desk: Pick<PictureDesk, 'ingest' | 'keepPyramid'>;
  readonly now: () => Date;
  readonly largestBytes: number;
}

/**
 * Takes a photograph in: receives it to the disk, reads it whole without its place data, and keeps it under the
 * hash of its bytes. Whatever goes wrong on the way, nothing of it stays.
 *
 * @returns `upload-too-large`, `upload-malformed` where it broke off, or why the picture cannot be read
 */
export async function addPhotograph(
  parts: AddPhotographParts,
  upload: Upload,
): Promise<Result<AddedPhotograph>> {
  const fileName = shownFileName(upload.fileName);
  const folder = join(parts.store.folder.incoming, randomUUID());
  try {
    await mkdir(folder);
    const received = await receive(parts, { ...upload, fileName }, join(folder, uploadNames.received));
    if (!received.ok) return received;
    const ingested = await parts.desk.ingest(folder, fileName);
    if (!ingested.ok) return ingested;
    return ok(await keep(parts, ingested.value, fileName, folder));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function receive(parts: AddPhotographParts, upload: Upload, to: string): Promise<Result<null>> {
  const handle = await open(to, 'wx');
  let count = 0;
  try {
    for await (const chunk of upload.content) {
      count += chunk.byteLength;
      if (count > parts.largestBytes) {
        const limit = Math.round(parts.largestBytes / 1e6);
        return fail(failure('upload-too-large', { file: upload.fileName, limit }));
      }
      await handle.write(chunk);
    }
    return ok(null);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return fail(failure('upload-malformed', { why }));
  } finally {
    await handle.close();
  }
}

async function keep(
  parts: AddPhotographParts,
  ingested: IngestedPhotograph,
  fileName: string,
  folder: string,
): Promise<AddedPhotograph> {
  const { photographs, photographFiles } = parts.store;
  const known = await photographs.find(ingested.id);
  if (known !== null) return { photograph: photographEntryOf(known), added: false };
  const cleaned = join(folder, uploadNames.cleaned);
  await syncFile(cleaned);
  await moveDurably(cleaned, photographFiles.pathOf(ingested.id, ingested.kind));
  await parts.desk.keepPyramid(ingested.id, join(folder, uploadNames.pyramid));
  const stored = { ...ingested, fileName, addedAt: parts.now().toISOString() };
  // the same photograph may have arrived twice at once; the first one's name stays
  const added = await photographs.add(stored);
  const kept = added ? stored : ((await photographs.find(ingested.id)) ?? stored);
  return { photograph: photographEntryOf(kept), added };
}
