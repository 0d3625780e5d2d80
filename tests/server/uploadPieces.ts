import { createHash } from 'node:crypto';
import type { UploadStart } from '../../src/records/photographUpload.ts';

/** What a sender tells of a file before its first piece. */
export function startOf(bytes: Uint8Array, fileName = 'stone.png'): UploadStart {
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  return { fileName, byteCount: bytes.byteLength, sha256 };
}

/** A piece of a file as it is sent. */
export function pieceOf(bytes: Uint8Array): RequestInit {
  return {
    method: 'PATCH',
    headers: { 'content-type': 'application/octet-stream' },
    body: bytes as Uint8Array<ArrayBuffer>,
  };
}
