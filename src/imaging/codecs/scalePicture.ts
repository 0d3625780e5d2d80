import { openPicture } from './pictureLibrary.ts';

/**
 * A smaller copy of an encoded picture, in the same format and no wider than asked; never enlarged.
 * For looking only. Throws where the bytes are no picture.
 */
export async function scalePicture(bytes: Uint8Array, widthPx: number): Promise<Uint8Array> {
  return openPicture(bytes).resize({ width: widthPx, withoutEnlargement: true }).toBuffer();
}
