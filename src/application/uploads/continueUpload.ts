import { open } from 'node:fs/promises';
import { addAbortSignal, type Readable } from 'node:stream';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { PhotographUpload } from '../../records/photographUpload.ts';
import { shownUpload, type UploadParts } from './uploadParts.ts';

export interface UploadPiece {
  readonly id: string;
  /** The device that sends; null for this machine. */
  readonly owner: string | null;
  /** The place of the piece's first byte in the whole file, from 0 on. */
  readonly from: number;
  readonly content: Readable;
}

/**
 * Puts a piece behind those that are here. What arrives before a connection breaks stays, so that the sender goes on
 * from there; it is on the disk before this returns. A piece of an upload that has become a photograph changes nothing.
 *
 * @returns `not-found`, `upload-gap` where the piece does not begin where the last one ended, `upload-malformed` where it
 * is longer than what was told of or broke off
 */
export async function continueUpload(
  parts: UploadParts,
  { id, owner, from, content }: UploadPiece,
): Promise<Result<PhotographUpload>> {
  return parts.uploadTurns.take(id, async (overtaken) => {
    const upload = await shownUpload(parts, id, owner);
    if (upload === null) return fail(failure('not-found', { what: 'such upload' }));
    if (upload.photograph !== null) return ok(upload);
    if (upload.receivedBytes !== from) {
      return fail(failure('upload-gap', { from, received: upload.receivedBytes }));
    }
    addAbortSignal(overtaken, content);
    const broken = await append(parts.store.uploadFiles.bytesPath(id), content, upload.byteCount - from);
    if (broken !== null) return fail(failure('upload-malformed', { why: broken }));
    return ok((await shownUpload(parts, id, owner))!);
  });
}

/** Why the piece is not whole; null where it is. An error of the disk is thrown. */
async function append(file: string, content: Readable, most: number): Promise<string | null> {
  const handle = await open(file, 'a');
  let left = most;
  try {
    const chunks = content[Symbol.asyncIterator]();
    for (;;) {
      const next = await chunks.next().catch((error: unknown) => ({ error }));
      if ('error' in next) return next.error instanceof Error ? next.error.message : String(next.error);
      if (next.done) return null;
      const chunk = next.value as Uint8Array;
      if (chunk.byteLength > left) return 'it holds more bytes than were told of';
      left -= chunk.byteLength;
      await handle.write(chunk);
    }
  } finally {
    await handle.sync();
    await handle.close();
  }
}
