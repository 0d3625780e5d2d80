import type { PhotographUpload } from '../../records/photographUpload.ts';
import type { Store } from '../../store/openStore.ts';
import type { AddPhotographParts } from '../addPhotograph.ts';
import type { UploadAllowance } from './uploadAllowance.ts';
import type { UploadTurns } from './uploadTurns.ts';

/** What the use cases need that take a photograph in pieces. */
export interface UploadParts extends AddPhotographParts {
  readonly store: AddPhotographParts['store'] & Pick<Store, 'uploadFiles'>;
  readonly uploadTurns: UploadTurns;
  readonly uploadAllowance: UploadAllowance;
}

/** How long an upload is kept from its beginning on, ms: it may be gone on with for a day. */
export const uploadLifeMs = 86_400_000;

/** An upload as its sender is told of it; null where there is none, its day is over, or another device sends it. */
export async function shownUpload(
  { store, now }: Pick<UploadParts, 'now'> & { readonly store: Pick<Store, 'uploadFiles'> },
  id: string,
  owner: string | null,
): Promise<PhotographUpload | null> {
  const found = await store.uploadFiles.find(id);
  if (found === null || found.owner !== owner) return null;
  const { owner: _, ...upload } = found;
  const ends = Date.parse(found.startedAt) + uploadLifeMs;
  if (ends <= now().getTime()) return null;
  const receivedBytes =
    found.photograph === null ? await store.uploadFiles.receivedBytes(id) : found.byteCount;
  return { ...upload, receivedBytes, endsAt: new Date(ends).toISOString() };
}
