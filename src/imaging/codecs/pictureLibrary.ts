import { createRequire } from 'node:module';
import type { Metadata, default as Sharp } from 'sharp';

type Library = typeof Sharp;
const load = createRequire(import.meta.url);
let loaded: Library | null = null;

/** Loaded with the first picture: the server starts without, and reads pictures in processes of their own. */
function library(): Library {
  if (loaded === null) {
    loaded = load('sharp') as Library;
    // operations are never repeated on the same bytes, so a cache would only hold memory
    loaded.cache(false);
  }
  return loaded;
}

export type PictureHandle = ReturnType<Library>;
export type PictureMetadata = Metadata;

/**
 * Opens an encoded picture; nothing is decoded yet. Any damage, a truncated end included, makes decoding
 * fail instead of returning grey. Size limits are checked on the header by `readHeader` beforehand.
 *
 * @param applyProfile let the library convert an embedded colour profile to sRGB; only right for 8 bits
 */
export function openPicture(bytes: Uint8Array, applyProfile = false): PictureHandle {
  return library()(bytes, { failOn: 'warning', limitInputPixels: false, ignoreIcc: !applyProfile });
}

/** Opens raw interleaved code values, 8 or 16 bits by the array's type. */
export function openCodes(
  codes: Uint8Array | Uint16Array,
  widthPx: number,
  heightPx: number,
  channels: 1 | 3,
): PictureHandle {
  return library()(codes, { raw: { width: widthPx, height: heightPx, channels }, limitInputPixels: false });
}
