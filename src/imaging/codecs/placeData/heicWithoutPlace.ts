import { blankTiffPlace } from './blankTiffPlace.ts';

const exifMark = 'Exif\0\0';

/**
 * A HEIC with its place data overwritten where it lies, so that no offset in the file changes: every EXIF block
 * found by its mark loses its GPS directory, every XMP packet is filled with spaces. Best effort: blocks are found
 * by searching, not through the file's item table, and a compressed XMP packet would be missed.
 */
export function heicWithoutPlace(bytes: Uint8Array): Uint8Array {
  const copy = Buffer.from(bytes);
  for (let at = copy.indexOf(exifMark, 0, 'latin1'); at >= 0; at = copy.indexOf(exifMark, at + 1, 'latin1')) {
    blankTiffPlace(copy.subarray(at + exifMark.length));
  }
  for (let at = copy.indexOf('<x:xmpmeta'); at >= 0; at = copy.indexOf('<x:xmpmeta', at + 1)) {
    const end = copy.indexOf('</x:xmpmeta>', at);
    if (end >= 0) copy.fill(0x20, at, end);
  }
  return new Uint8Array(copy.buffer, copy.byteOffset, copy.byteLength);
}
