import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ok, type Result } from '../../foundation/result.ts';
import { decodePhotograph } from '../../imaging/codecs/decodePhotograph.ts';
import type { PictureKind } from '../../imaging/codecs/pictureKind.ts';
import { readHeader } from '../../imaging/codecs/readHeader.ts';
import { removePlaceData } from '../../imaging/codecs/removePlaceData.ts';
import { writePyramid } from '../../imaging/codecs/writePyramid.ts';

/** What an upload turned out to be, once read whole. */
export interface IngestedPhotograph {
  /** SHA-256 of the bytes after place data was removed. */
  readonly id: string;
  readonly kind: PictureKind;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly byteCount: number;
}

/** Names inside the folder of an upload. */
export const uploadNames = { received: 'received', cleaned: 'cleaned', pyramid: 'pyramid' } as const;

/**
 * Reads an uploaded photograph whole, so that a damaged one is refused while the person is still there: takes its
 * place data out, decodes it, and writes the cleaned bytes and the tiles beside it. Heavy: meant for a thread.
 *
 * @param folder holds the upload as `received`
 * @returns the failures of `decodePhotograph`
 */
export async function ingestPhotograph(
  folder: string,
  fileName: string,
): Promise<Result<IngestedPhotograph>> {
  const received = await readFile(join(folder, uploadNames.received));
  const header = await readHeader(received, fileName);
  if (!header.ok) return header;
  const { kind } = header.value;
  const cleaned = removePlaceData(received);
  const photograph = await decodePhotograph(cleaned, fileName);
  if (!photograph.ok) return photograph;
  await writeFile(join(folder, uploadNames.cleaned), cleaned);
  await writePyramid(photograph.value, join(folder, uploadNames.pyramid));
  const { widthPx, heightPx } = photograph.value;
  const id = createHash('sha256').update(cleaned).digest('hex');
  return ok({ id, kind, widthPx, heightPx, byteCount: cleaned.byteLength });
}
