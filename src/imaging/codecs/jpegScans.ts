/** Where a JPEG's entropy-coded data ends: the next marker that is neither a stuffed byte nor a restart. */
export function jpegScanEnd(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(0xff, from);
  while (at >= 0 && at + 1 < bytes.length) {
    const next = bytes[at + 1]!;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
    at = bytes.indexOf(0xff, at + (next === 0xff ? 1 : 2));
  }
  return bytes.length;
}

/**
 * How many scans a JPEG holds up to its picture's end (ITU-T T.81 B.2): one or three in a baseline picture, some ten in
 * a progressive one. Each goes over the whole picture, so that a small file with many keeps a decoder busy for days.
 * What lies behind bytes that no decoder follows without complaint is not counted.
 */
export function jpegScanCount(bytes: Uint8Array): number {
  let scans = 0;
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1]!;
    if (marker === 0xd9) break;
    if (marker === 0xff) at++;
    // these carry no length: TEM, restarts, SOI
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) at += 2;
    else {
      at += 2 + ((bytes[at + 2]! << 8) | bytes[at + 3]!);
      if (marker === 0xda) {
        scans++;
        at = jpegScanEnd(bytes, at);
      }
    }
  }
  return scans;
}
