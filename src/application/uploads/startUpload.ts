import { createHash } from 'node:crypto';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { PhotographUpload, UploadStart } from '../../records/photographUpload.ts';
import { shownFileName } from '../shownFileName.ts';
import { sweepUploads } from './sweepUploads.ts';
import { shownUpload, type UploadParts } from './uploadParts.ts';

/** Our rule: how much one device may have begun and not ended. One that sends in order has begun one. */
const mostUnfinished = 20;
const mostUnfinishedBytes = 1e9;

export interface StartedUpload {
  readonly upload: PhotographUpload;
  /** False where this sender had begun it before. */
  readonly begun: boolean;
}

/**
 * Begins to take a photograph in pieces, or finds the one that this sender began: what names it is who sends and what
 * it holds, so that a beginning that is asked for twice is one.
 *
 * @param owner the device that sends; null for this machine
 * @returns `upload-too-large`, `uploads-unfinished`, `uploads-too-many`
 */
export async function startUpload(
  parts: UploadParts,
  start: UploadStart,
  owner: string | null,
): Promise<Result<StartedUpload>> {
  const { store, now, largestBytes, uploadTurns, uploadAllowance } = parts;
  const fileName = shownFileName(start.fileName);
  if (start.byteCount > largestBytes) {
    return fail(failure('upload-too-large', { file: fileName, limit: Math.round(largestBytes / 1e6) }));
  }
  await sweepUploads(parts);
  const id = createHash('sha256')
    .update(JSON.stringify([owner, start.sha256, start.byteCount]))
    .digest('hex');
  return uploadTurns.take(id, async () => {
    const known = await shownUpload(parts, id, owner);
    if (known !== null) return ok({ upload: known, begun: false });
    const all = await store.uploadFiles.all();
    const unfinished = all.filter((one) => one.owner === owner && one.photograph === null);
    const bytes = unfinished.reduce((sum, { byteCount }) => sum + byteCount, 0);
    const full = unfinished.length >= mostUnfinished || bytes + start.byteCount > mostUnfinishedBytes;
    if (owner !== null && full) {
      return fail(failure('uploads-unfinished', { count: unfinished.length }));
    }
    const allowed = uploadAllowance.take(owner, start.byteCount);
    if (!allowed.ok) return allowed;
    const startedAt = now().toISOString();
    await store.uploadFiles.add({ ...start, fileName, id, owner, photograph: null, startedAt });
    return ok({ upload: (await shownUpload(parts, id, owner))!, begun: true });
  });
}
