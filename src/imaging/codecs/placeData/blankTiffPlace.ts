/** GPS directory; then the blocks that may hold a place in words: XMP, IPTC, Photoshop resources. */
const placeTags = new Set([0x8825, 700, 33723, 34377]);
const gpsTag = 0x8825;

/** Bytes per value of each TIFF field type, 1 to 13 (TIFF 6.0, section 2, and supplement 1). */
const typeSizes = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4];

/**
 * Takes place data out of a TIFF structure (a TIFF file, or an EXIF block) in place: the GPS directory and the
 * XMP, IPTC and Photoshop blocks are overwritten with zeros and their entries removed from the directory. No
 * byte moves outside the directory, so every other offset still holds. Maker notes are left alone.
 *
 * @param bytes the structure, starting at its `II` or `MM`; changed in place
 * @returns whether anything was removed; a malformed or BigTIFF structure is left alone
 */
export function blankTiffPlace(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 14) return false;
  const little = bytes[0] === 0x49;
  if (view.getUint16(2, little) !== 42) return false;
  let removed = false;
  const seen = new Set<number>();
  let directory = view.getUint32(4, little);
  while (directory !== 0 && !seen.has(directory) && seen.size < 32) {
    seen.add(directory);
    const count = entryCount(view, directory, little);
    if (count === null) break;
    const next = view.getUint32(directory + 2 + 12 * count, little);
    removed = removeEntries(bytes, view, directory, count, little) || removed;
    directory = next;
  }
  return removed;
}

function entryCount(view: DataView, directory: number, little: boolean): number | null {
  if (directory + 2 > view.byteLength) return null;
  const count = view.getUint16(directory, little);
  return directory + 2 + 12 * count + 4 > view.byteLength ? null : count;
}

function removeEntries(
  bytes: Uint8Array,
  view: DataView,
  directory: number,
  count: number,
  little: boolean,
): boolean {
  const start = directory + 2;
  let kept = 0;
  for (let index = 0; index < count; index++) {
    const entry = start + 12 * index;
    const tag = view.getUint16(entry, little);
    if (placeTags.has(tag)) {
      if (tag === gpsTag) blankDirectory(bytes, view, view.getUint32(entry + 8, little), little);
      else blankValue(bytes, view, entry, little);
      continue;
    }
    bytes.copyWithin(start + 12 * kept, entry, entry + 12);
    kept++;
  }
  if (kept === count) return false;
  const end = start + 12 * count;
  bytes.copyWithin(start + 12 * kept, end, end + 4);
  bytes.fill(0, start + 12 * kept + 4, end + 4);
  view.setUint16(directory, kept, little);
  return true;
}

function blankDirectory(bytes: Uint8Array, view: DataView, directory: number, little: boolean): void {
  const count = entryCount(view, directory, little);
  if (count === null) return;
  for (let index = 0; index < count; index++) blankValue(bytes, view, directory + 2 + 12 * index, little);
  bytes.fill(0, directory, directory + 2 + 12 * count + 4);
}

function blankValue(bytes: Uint8Array, view: DataView, entry: number, little: boolean): void {
  const size = (typeSizes[view.getUint16(entry + 2, little)] ?? 1) * view.getUint32(entry + 4, little);
  if (size <= 4) return;
  const offset = view.getUint32(entry + 8, little);
  if (offset >= 8 && offset + size <= bytes.length) bytes.fill(0, offset, offset + size);
}
