import { blankTiffPlace } from './blankTiffPlace.ts';
import { createKeptParts } from './keptParts.ts';

/** Bit of the VP8X flags that announces XMP (WebP container specification, RFC 9649). */
const xmpFlag = 0x04;

/** A WebP without place data, its picture data unchanged: GPS is taken out of `EXIF`, the `XMP ` chunk is dropped. */
export function webpWithoutPlace(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kept = createKeptParts(bytes);
  kept.keep(0, 12);
  let at = 12;
  while (at + 8 <= bytes.length) {
    const size = view.getUint32(at + 4, true);
    const end = Math.min(at + 8 + size + (size % 2), bytes.length);
    const type = String.fromCharCode(bytes[at]!, bytes[at + 1]!, bytes[at + 2]!, bytes[at + 3]!);
    if (type === 'EXIF' || type === 'VP8X') kept.put(cleanedChunk(type, bytes.slice(at, end), size));
    else if (type !== 'XMP ') kept.keep(at, end);
    at = end;
  }
  const joined = kept.join();
  new DataView(joined.buffer).setUint32(4, joined.length - 8, true);
  return joined;
}

/** The chunk, changed in place. */
function cleanedChunk(type: 'EXIF' | 'VP8X', chunk: Uint8Array, size: number): Uint8Array {
  if (type === 'EXIF') blankTiffPlace(chunk.subarray(tiffStart(chunk), 8 + size));
  else chunk[8]! &= ~xmpFlag;
  return chunk;
}

/** Some writers put `Exif\0\0` before the TIFF structure, as in JPEG. */
function tiffStart(chunk: Uint8Array): number {
  return chunk[8] === 0x45 ? 14 : 8;
}
