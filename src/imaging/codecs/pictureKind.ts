/** The kinds of picture file that are read. */
export type PictureKind = 'jpeg' | 'png' | 'tiff' | 'webp' | 'heic';

const heicBrands = new Set(['heic', 'heix', 'hevc', 'hevx', 'mif1', 'msf1']);

function ascii(bytes: Uint8Array, from: number, to: number): string {
  return String.fromCharCode(...bytes.subarray(from, to));
}

function startsWith(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((value, index) => bytes[index] === value);
}

/**
 * Tells the kind of a picture from its first bytes, never from its name; null for anything not read here.
 * Signatures: JPEG (ITU-T T.81 SOI), PNG (W3C PNG 5.2), TIFF 6.0 and BigTIFF, RIFF/WebP, ISO base media
 * brands of HEIF (ISO/IEC 23008-12). `mif1` and `msf1` are taken for HEIC; an AV1 picture in such a file
 * fails later, when it is decoded.
 */
export function pictureKind(bytes: Uint8Array): PictureKind | null {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return 'jpeg';
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'png';
  const mark = ascii(bytes, 0, 4);
  if (mark === 'II*\0' || mark === 'MM\0*' || mark === 'II+\0' || mark === 'MM\0+') return 'tiff';
  if (mark === 'RIFF' && ascii(bytes, 8, 12) === 'WEBP') return 'webp';
  if (ascii(bytes, 4, 8) === 'ftyp' && heicBrands.has(ascii(bytes, 8, 12))) return 'heic';
  return null;
}

/** Names what an unreadable file seems to be, for the sentence that refuses it. */
export function describeUnknown(bytes: Uint8Array): string {
  if (ascii(bytes, 4, 8) === 'jP  ' || startsWith(bytes, [0xff, 0x4f, 0xff, 0x51]))
    return 'it looks like JPEG 2000';
  if (ascii(bytes, 0, 4) === 'GIF8') return 'it looks like a GIF';
  if (ascii(bytes, 0, 4) === '%PDF') return 'it looks like a PDF';
  if (ascii(bytes, 0, 2) === 'BM') return 'it looks like a BMP';
  if (ascii(bytes, 0, 2) === 'PK') return 'it looks like a ZIP archive';
  if (ascii(bytes, 4, 8) === 'ftyp')
    return 'it looks like a film, or another picture of the ISO media family';
  const head = bytes.subarray(0, 64);
  if (head.every((value) => value >= 32 || value === 9 || value === 10 || value === 13))
    return 'it looks like text';
  return 'its first bytes belong to no picture known here';
}
