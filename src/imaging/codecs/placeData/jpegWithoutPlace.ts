import { blankTiffPlace } from './blankTiffPlace.ts';

const exifMark = 'Exif\0\0';
const xmpMark = 'http://ns.adobe.com/x';

/**
 * A JPEG without place data, its picture data unchanged byte for byte: GPS is taken out of EXIF, XMP (APP1) and
 * Photoshop/IPTC (APP13) segments are dropped, and so is everything after the picture's end, where phones hang
 * further pictures with headers of their own. A file that can't be followed is kept from that point on as it is.
 */
export function jpegWithoutPlace(bytes: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = [bytes.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return join([...parts, bytes.subarray(at)]);
    const marker = bytes[at + 1]!;
    if (marker === 0xd9) return join([...parts, bytes.subarray(at, at + 2)]);
    if (marker === 0xff) {
      at++;
      continue;
    }
    const end = at + 2 + ((bytes[at + 2]! << 8) | bytes[at + 3]!);
    const segment = bytes.subarray(at, end);
    at = end;
    if (marker === 0xda) {
      at = scanEnd(bytes, end);
      parts.push(segment, bytes.subarray(end, at));
    } else if (!holdsPlaceOnly(marker, segment)) parts.push(withoutGps(marker, segment));
  }
  return join([...parts, bytes.subarray(at)]);
}

/** Where the entropy-coded data ends: the next marker that is neither a stuffed byte nor a restart. */
function scanEnd(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(0xff, from);
  while (at >= 0 && at + 1 < bytes.length) {
    const next = bytes[at + 1]!;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
    at = bytes.indexOf(0xff, at + (next === 0xff ? 1 : 2));
  }
  return bytes.length;
}

function holdsPlaceOnly(marker: number, segment: Uint8Array): boolean {
  return marker === 0xed || (marker === 0xe1 && textAt(segment, 4, xmpMark));
}

function withoutGps(marker: number, segment: Uint8Array): Uint8Array {
  if (marker !== 0xe1 || !textAt(segment, 4, exifMark)) return segment;
  const copy = segment.slice();
  return blankTiffPlace(copy.subarray(10)) ? copy : segment;
}

function textAt(bytes: Uint8Array, offset: number, text: string): boolean {
  return [...text].every((letter, index) => bytes[offset + index] === letter.charCodeAt(0));
}

function join(parts: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(parts));
}
