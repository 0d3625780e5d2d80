import { blankTiffPlace } from './blankTiffPlace.ts';

const exifMark = 'Exif\0\0';
/** EXIF blocks that are looked at: a file has one for each of its few pictures, a hostile one millions. */
const blocksLookedAt = 64;

/**
 * A HEIC with its place data overwritten where it lies, so that no offset in the file changes: every EXIF block
 * found by its mark loses its GPS directory, every XMP packet is filled with spaces. Best effort: blocks are found
 * by searching, not through the file's item table, and a compressed XMP packet would be missed.
 */
export function heicWithoutPlace(bytes: Uint8Array): Uint8Array {
  const copy = Buffer.from(bytes);
  let blocks = 0;
  let at = copy.indexOf(exifMark, 0, 'latin1');
  for (; at >= 0 && blocks < blocksLookedAt; at = copy.indexOf(exifMark, at + 1, 'latin1')) {
    blankTiffPlace(copy.subarray(at + exifMark.length));
    blocks++;
  }
  at = copy.indexOf('<x:xmpmeta');
  while (at >= 0) {
    const end = copy.indexOf('</x:xmpmeta>', at);
    if (end < 0) break;
    copy.fill(0x20, at, end);
    at = copy.indexOf('<x:xmpmeta', end);
  }
  return new Uint8Array(copy.buffer, copy.byteOffset, copy.byteLength);
}
