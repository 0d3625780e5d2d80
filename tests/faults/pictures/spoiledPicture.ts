import { crc32 } from 'node:zlib';
import type { Random } from '../../../src/foundation/random.ts';
import { oneOf, wholeBetween } from '../requests/choose.ts';
import { sizeFields } from './sizeFields.ts';

/** How a picture can be spoiled. */
export const spoilings = [
  'bits',
  'head',
  'cut',
  'splice',
  'sizes',
  'run',
  'doubled',
  'filled',
  'mark',
] as const;
export type Spoiling = (typeof spoilings)[number];

/** A copy of a picture, spoiled; `other` lends its bytes to splices. */
export function spoiledPicture(
  picture: Uint8Array,
  other: Uint8Array,
  how: Spoiling,
  random: Random,
): Uint8Array {
  const bytes = Buffer.from(picture);
  const place = (from = 0) => wholeBetween(random, from, bytes.length - 1);
  switch (how) {
    case 'bits':
      return flipped(bytes, bytes.length, random);
    case 'head':
      return flipped(bytes, Math.min(bytes.length, 400), random);
    case 'cut':
      return random() < 0.8
        ? bytes.subarray(0, place())
        : Buffer.concat([bytes.subarray(0, 16), bytes.subarray(place(16))]);
    case 'splice':
      return Buffer.concat([
        bytes.subarray(0, place()),
        other.subarray(wholeBetween(random, 0, other.length - 1)),
      ]);
    case 'sizes':
      return withSizes(bytes, random);
    case 'run': {
      const at = place();
      return bytes.fill(
        oneOf(random, [0, 255, 65]),
        at,
        Math.min(bytes.length, at + wholeBetween(random, 1, 300)),
      );
    }
    case 'doubled': {
      const at = place();
      return Buffer.concat([bytes.subarray(0, at), bytes.subarray(place(), at + 500), bytes.subarray(at)]);
    }
    case 'filled': {
      const at = place();
      const noise = Uint8Array.from({ length: wholeBetween(random, 1, 2000) }, () => random() * 256);
      return Buffer.concat([bytes.subarray(0, at), noise, bytes.subarray(at)]);
    }
    case 'mark':
      // the first bytes of another picture, so that it is read as what it is not
      bytes.set(other.subarray(0, Math.min(12, bytes.length)));
      return bytes;
    default:
      return how satisfies never;
  }
}

function flipped(bytes: Buffer, within: number, random: Random): Buffer {
  const times = wholeBetween(random, 1, 12);
  for (let time = 0; time < times; time++) {
    const at = wholeBetween(random, 4, within - 1);
    bytes[at]! ^= 1 << wholeBetween(random, 0, 7);
  }
  return bytes;
}

const sides = [0, 1, 15, 16, 17, 97, 4096, 7000, 8191, 16384, 32767, 65535, 2 ** 31 - 1, 2 ** 32 - 1];

/** Says another size than the picture has; a PNG's check sum is mended, so that the size is believed. */
function withSizes(bytes: Buffer, random: Random): Buffer {
  const fields = sizeFields(bytes);
  if (fields.length === 0) return flipped(bytes, Math.min(bytes.length, 400), random);
  for (const { at, bytes: length, little } of random() < 0.5 ? fields : [oneOf(random, fields)]) {
    const value = oneOf(random, sides) % 2 ** (8 * length);
    if (little) bytes.writeUIntLE(value, at, length);
    else bytes.writeUIntBE(value, at, length);
  }
  if (bytes[0] === 0x89) bytes.writeUInt32BE(crc32(bytes.subarray(12, 29)), 29);
  return bytes;
}
