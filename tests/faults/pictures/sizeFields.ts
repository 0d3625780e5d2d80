import { pictureKind } from '../../../src/imaging/codecs/pictureKind.ts';

/** Where a file says how large its picture is: where the field begins, and its length in bytes. */
export interface SizeField {
  readonly at: number;
  readonly bytes: 2 | 4;
  readonly little: boolean;
}

/**
 * The fields for width and height of a sound picture: IHDR (PNG 11.2.1), SOF (ITU-T T.81 B.2.2), tags 256, 257, 278,
 * 322, 323 (TIFF 6.0), VP8 and VP8X (RFC 9649, RFC 6386), every `ispe` (ISO/IEC 23008-12 6.5.3).
 */
export function sizeFields(picture: Uint8Array): readonly SizeField[] {
  const bytes = Buffer.from(picture);
  const big = (...places: number[]) => places.map((at) => ({ at, bytes: 4 as const, little: false }));
  switch (pictureKind(picture)) {
    case 'png':
      return big(16, 20);
    case 'jpeg':
      return jpegFields(bytes);
    case 'tiff':
      return tiffFields(bytes);
    case 'webp': {
      const kind = bytes.toString('latin1', 12, 16);
      const at = kind === 'VP8X' ? [24, 27] : kind === 'VP8L' ? [21] : [26, 28];
      return at.map((place) => ({ at: place, bytes: 2 as const, little: true }));
    }
    case 'heic':
      return allPlaces(bytes, 'ispe').flatMap((at) => big(at + 8, at + 12));
    default:
      return [];
  }
}

function allPlaces(bytes: Buffer, text: string): number[] {
  const places: number[] = [];
  for (let at = bytes.indexOf(text); at >= 0; at = bytes.indexOf(text, at + 1)) places.push(at);
  return places;
}

function jpegFields(bytes: Buffer): SizeField[] {
  for (let at = 2; at + 9 < bytes.length && bytes[at] === 0xff; at += 2 + bytes.readUInt16BE(at + 2)) {
    const marker = bytes[at + 1]!;
    if (marker >= 0xc0 && marker <= 0xc2)
      return [5, 7].map((more) => ({ at: at + more, bytes: 2, little: false }));
  }
  return [];
}

function tiffFields(bytes: Buffer): SizeField[] {
  if (bytes[2] === 43) return [];
  const little = bytes[0] === 0x49;
  const two = (at: number) => (little ? bytes.readUInt16LE(at) : bytes.readUInt16BE(at));
  const directory = little ? bytes.readUInt32LE(4) : bytes.readUInt32BE(4);
  return Array.from({ length: two(directory) }, (_, index) => directory + 2 + 12 * index)
    .filter((entry) => [256, 257, 278, 322, 323].includes(two(entry)))
    .map((entry) => ({ at: entry + 8, bytes: two(entry + 2) === 3 ? 2 : 4, little }));
}
