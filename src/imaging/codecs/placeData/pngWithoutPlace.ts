import { crc32 } from 'node:zlib';
import { blankTiffPlace } from './blankTiffPlace.ts';
import { createKeptParts } from './keptParts.ts';

/** Text chunks can hold XMP and raw EXIF or IPTC profiles, and none of them bears on the picture. */
const textChunks = new Set(['iTXt', 'tEXt', 'zTXt']);

/** A PNG without place data, its picture data unchanged: GPS is taken out of `eXIf`, text chunks are dropped. */
export function pngWithoutPlace(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kept = createKeptParts(bytes);
  kept.keep(0, 8);
  let at = 8;
  while (at + 12 <= bytes.length) {
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length) break;
    const type = String.fromCharCode(bytes[at + 4]!, bytes[at + 5]!, bytes[at + 6]!, bytes[at + 7]!);
    if (type === 'eXIf') kept.put(withoutGps(bytes.subarray(at, end)));
    else if (!textChunks.has(type)) kept.keep(at, end);
    at = end;
    if (type === 'IEND') return kept.join();
  }
  kept.keep(at, bytes.length);
  return kept.join();
}

function withoutGps(chunk: Uint8Array): Uint8Array {
  const copy = chunk.slice();
  if (!blankTiffPlace(copy.subarray(8, -4))) return chunk;
  new DataView(copy.buffer).setUint32(copy.length - 4, crc32(copy.subarray(4, -4)));
  return copy;
}
