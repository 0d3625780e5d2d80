import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { PhotographUpload, UploadStart } from '../../records/photographUpload.ts';
import { ask, withJson } from './ask.ts';
import { fileHash } from './fileHash.ts';
import { firstPieceBytes, nextPieceBytes } from './pieceSize.ts';
import { sendBody } from './sendBody.ts';
import { FailedRequest } from './shownFailure.ts';

/** A server that says nothing for so long counts as out of reach, ms: to a question, and while it reads a picture. */
const answerMs = 60_000;
const readingMs = 180_000;

/** How long is waited before the next try after one that got nothing through, ms. */
const waitsMs = [500, 1000, 2000, 4000, 8000, 8000] as const;

/**
 * Sends a photograph in pieces, and goes on by itself where the line breaks or the server starts anew: the same file goes
 * on where it stopped, also from a page that was loaded again.
 *
 * @param onShare hears the share that is there, 0..1
 * @param tries how often in a row nothing may get through before it is given up: 1 to 7
 * @returns rejects with `FailedRequest`, or what the browser throws where the server stays out of reach
 */
export async function addInPieces(
  file: File | Blob,
  fileName: string,
  onShare: (share: number) => void,
  tries: number = waitsMs.length + 1,
): Promise<PhotographEntry> {
  const start: UploadStart = { fileName, byteCount: file.size, sha256: await fileHash(file) };
  const line = createPatience(tries);
  let upload = await line.through(() => begin(start));
  let pieceBytes = firstPieceBytes;
  while (upload.photograph === null && upload.receivedBytes < file.size) {
    const from = upload.receivedBytes;
    onShare(from / file.size);
    const begun = performance.now();
    try {
      upload = await sendPiece(upload.id, from, file.slice(from, from + pieceBytes), (there) =>
        onShare(there / file.size),
      );
      line.moved();
      pieceBytes = nextPieceBytes(upload.receivedBytes - from, performance.now() - begun);
    } catch (thrown) {
      pieceBytes = firstPieceBytes;
      if (!isMended(thrown)) await line.waitAfter(thrown);
      // a beginning that is there already tells how far it is; one that was let go begins anew
      upload = await line.through(() => begin(start));
      if (upload.receivedBytes > from) line.moved();
    }
  }
  onShare(1);
  const { id } = upload;
  return line.through(() =>
    ask(`/api/uploads/${id}/photograph`, { method: 'POST', signal: AbortSignal.timeout(readingMs) }),
  );
}

function begin(start: UploadStart): Promise<PhotographUpload> {
  return ask('/api/uploads', { ...withJson('POST', start), signal: AbortSignal.timeout(answerMs) });
}

function sendPiece(
  id: string,
  from: number,
  piece: Blob,
  onThere: (bytes: number) => void,
): Promise<PhotographUpload> {
  return sendBody('PATCH', `/api/uploads/${id}?from=${from}`, piece, (gone, total) =>
    onThere(from + (gone / total) * piece.size),
  );
}

/** Whether asking how far it is mends what was refused. */
function isMended(thrown: unknown): boolean {
  return thrown instanceof FailedRequest && ['upload-gap', 'upload-malformed'].includes(thrown.failure.code);
}

/** Tries again while nothing gets through, waiting longer each time; what the server refuses is thrown at once. */
function createPatience(tries: number) {
  let failures = 0;
  async function waitAfter(thrown: unknown): Promise<void> {
    if (thrown instanceof FailedRequest || ++failures >= tries) throw thrown;
    const wait = waitsMs[Math.min(failures, waitsMs.length) - 1]!;
    await new Promise((resolve) => setTimeout(resolve, wait));
  }
  return {
    moved: () => {
      failures = 0;
    },
    waitAfter,
    async through<T>(act: () => Promise<T>): Promise<T> {
      for (;;) {
        try {
          return await act();
        } catch (thrown) {
          await waitAfter(thrown);
        }
      }
    },
  };
}
