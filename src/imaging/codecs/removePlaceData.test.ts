import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodePhotograph } from './decodePhotograph.ts';
import { openCodes, openPicture } from './pictureLibrary.ts';
import { removePlaceData } from './removePlaceData.ts';

const codes = Uint8Array.from({ length: 64 * 48 * 3 }, (_, index) => (index * 13) % 256);
const place = { IFD3: { GPSLatitude: '52/1 57/1 4321/100', GPSLatitudeRef: 'N' } };
const described = { IFD0: { Orientation: '6', Model: 'SaltreachCam' } };
const xmp =
  '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" photoshop:City="Saltreach"/></rdf:RDF></x:xmpmeta>';

/** 4321/100 as two little-endian 32-bit numbers, and the same as libexif writes it big-endian. */
const secondsMarks = [
  Buffer.from([0xe1, 0x10, 0, 0, 0x64, 0, 0, 0]),
  Buffer.from([0, 0, 0x10, 0xe1, 0, 0, 0, 0x64]),
];

const holdsPlace = (bytes: Uint8Array) => {
  const buffer = Buffer.from(bytes);
  return secondsMarks.some((mark) => buffer.includes(mark)) || buffer.includes('Saltreach"');
};

async function pixels(bytes: Uint8Array): Promise<number[]> {
  const result = await decodePhotograph(bytes, 'picture');
  if (!result.ok) throw new Error(result.error.message);
  return Array.from(result.value.codes);
}

describe('removePlaceData', () => {
  it.each(['jpeg', 'png', 'webp', 'tiff'] as const)(
    'takes the place out of a %s and nothing else',
    async (format) => {
      const bytes = await openCodes(codes, 64, 48, 3)
        .withExif({ ...described, ...place })
        .withXmp(xmp)
        .toFormat(format)
        .toBuffer();
      expect(holdsPlace(bytes)).toBe(true);
      const before = bytes.slice();
      const cleaned = removePlaceData(bytes);
      expect(bytes.equals(before)).toBe(true);
      expect(holdsPlace(cleaned)).toBe(false);
      expect(await pixels(cleaned)).toEqual(await pixels(bytes));
      expect((await openPicture(cleaned).metadata()).orientation).toBe(
        (await openPicture(bytes).metadata()).orientation,
      );
      expect(Buffer.from(removePlaceData(cleaned)).equals(Buffer.from(cleaned))).toBe(true);
    },
  );

  it('drops the further picture that a phone hangs behind a JPEG, header and all', async () => {
    const first = await openCodes(codes, 64, 48, 3).jpeg().toBuffer();
    const second = await openCodes(codes, 64, 48, 3).withExif(place).jpeg().toBuffer();
    const cleaned = removePlaceData(Buffer.concat([first, second]));
    expect(holdsPlace(cleaned)).toBe(false);
    expect(Buffer.from(cleaned).equals(first)).toBe(true);
  });

  it('overwrites the place in a HEIC where it lies', async () => {
    const heic = readFileSync(
      new URL('../../../tests/published/data/decoder/made-heic.heic', import.meta.url),
    );
    const jpeg = await openCodes(codes, 64, 48, 3).withExif(place).jpeg().toBuffer();
    const exif = jpeg.subarray(jpeg.indexOf('Exif\0\0'), jpeg.indexOf('Exif\0\0') + 300);
    const head = Buffer.alloc(8);
    head.writeUInt32BE(8 + exif.length + xmp.length);
    head.write('free', 4);
    const bytes = Buffer.concat([heic, head, exif, Buffer.from(xmp)]);
    expect(holdsPlace(bytes)).toBe(true);
    const cleaned = removePlaceData(bytes);
    expect(cleaned.length).toBe(bytes.length);
    expect(holdsPlace(cleaned)).toBe(false);
    expect(await pixels(cleaned)).toEqual(await pixels(heic));
  });

  it('leaves unknown and damaged files as they are', () => {
    for (const bytes of [
      new Uint8Array(0),
      Uint8Array.of(1, 2, 3),
      Uint8Array.of(0xff, 0xd8, 0xff, 0xe1, 0xff),
    ]) {
      expect(Array.from(removePlaceData(bytes))).toEqual(Array.from(bytes));
    }
  });
});
