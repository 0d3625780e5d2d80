import { blankTiffPlace } from './blankTiffPlace.ts';

/** Bit of the VP8X flags that announces XMP (WebP container specification, RFC 9649). */
const xmpFlag = 0x04;

/** A WebP without place data, its picture data unchanged: GPS is taken out of `EXIF`, the `XMP ` chunk is dropped. */
export function webpWithoutPlace(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [bytes.slice(0, 12)];
  let at = 12;
  while (at + 8 <= bytes.length) {
    const size = view.getUint32(at + 4, true);
    const end = Math.min(at + 8 + size + (size % 2), bytes.length);
    const chunk = bytes.slice(at, end);
    const type = String.fromCharCode(...chunk.subarray(0, 4));
    if (type === 'EXIF') blankTiffPlace(chunk.subarray(tiffStart(chunk), 8 + size));
    if (type === 'VP8X') chunk[8]! &= ~xmpFlag;
    if (type !== 'XMP ') parts.push(chunk);
    at = end;
  }
  const joined = new Uint8Array(Buffer.concat(parts));
  new DataView(joined.buffer).setUint32(4, joined.length - 8, true);
  return joined;
}

/** Some writers put `Exif\0\0` before the TIFF structure, as in JPEG. */
function tiffStart(chunk: Uint8Array): number {
  return chunk[8] === 0x45 ? 14 : 8;
}
