import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { type AddedPhotograph, addPhotograph } from '../addPhotograph.ts';
import { photographEntryOf } from '../photographEntryOf.ts';
import { shownUpload, type UploadParts } from './uploadParts.ts';

/**
 * Takes in a photograph of which all pieces are here, once their SHA-256 is the one that was told. Asked again, it
 * answers with the same photograph. What is no photograph, or another than was told, is let go.
 *
 * @returns `not-found`, `upload-unfinished`, `upload-differs`, or why the picture cannot be read
 */
export async function finishUpload(
  parts: UploadParts,
  id: string,
  owner: string | null,
): Promise<Result<AddedPhotograph>> {
  const { uploadFiles, photographs } = parts.store;
  return parts.uploadTurns.take(id, async () => {
    const upload = await shownUpload(parts, id, owner);
    if (upload === null) return fail(failure('not-found', { what: 'such upload' }));
    const { fileName, byteCount, receivedBytes, sha256, startedAt } = upload;
    const before = upload.photograph === null ? null : await photographs.find(upload.photograph);
    if (before !== null) return ok({ photograph: photographEntryOf(before), added: false });
    if (receivedBytes < byteCount) {
      return fail(failure('upload-unfinished', { received: receivedBytes, total: byteCount }));
    }
    const file = uploadFiles.bytesPath(id);
    if ((await sha256Of(file)) !== sha256) {
      await uploadFiles.drop(id);
      return fail(failure('upload-differs'));
    }
    const added = await addPhotograph(parts, { fileName, content: createReadStream(file) });
    if (!added.ok) {
      await uploadFiles.drop(id);
      return added;
    }
    const { id: photograph } = added.value.photograph;
    await uploadFiles.save({ id, owner, fileName, byteCount, sha256, startedAt, photograph });
    await uploadFiles.dropBytes(id);
    return added;
  });
}

async function sha256Of(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(file)) hash.update(chunk as Uint8Array);
  return hash.digest('hex');
}
