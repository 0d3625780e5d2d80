import { jpegScanEnd } from '../jpegScans.ts';
import { blankTiffPlace } from './blankTiffPlace.ts';
import { createKeptParts } from './keptParts.ts';

const exifMark = 'Exif\0\0';
const xmpMark = 'http://ns.adobe.com/x';

/**
 * A JPEG without place data, its picture data unchanged byte for byte: GPS is taken out of EXIF, XMP (APP1) and
 * Photoshop/IPTC (APP13) segments are dropped, and so is everything after the picture's end, where phones hang
 * further pictures with headers of their own. A file that can't be followed is kept from that point on as it is.
 */
export function jpegWithoutPlace(bytes: Uint8Array): Uint8Array {
  const kept = createKeptParts(bytes);
  kept.keep(0, 2);
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1]!;
    if (marker === 0xd9) {
      kept.keep(at, at + 2);
      return kept.join();
    }
    if (marker === 0xff) {
      at++;
      continue;
    }
    const start = at;
    const end = start + 2 + ((bytes[start + 2]! << 8) | bytes[start + 3]!);
    at = marker === 0xda ? jpegScanEnd(bytes, end) : end;
    const segment = bytes.subarray(start, end);
    if (holdsPlaceOnly(marker, segment)) continue;
    const cleaned = withoutGps(marker, segment);
    if (cleaned === segment) kept.keep(start, at);
    else kept.put(cleaned);
  }
  kept.keep(at, bytes.length);
  return kept.join();
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
  for (let index = 0; index < text.length; index++) {
    if (bytes[offset + index] !== text.charCodeAt(index)) return false;
  }
  return true;
}
