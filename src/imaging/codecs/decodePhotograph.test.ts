import { readFileSync } from 'node:fs';
import Color from 'colorjs.io';
import { describe, expect, it } from 'vitest';
import type { Photograph } from '../photograph.ts';
import { decodePhotograph } from './decodePhotograph.ts';
import { encodePng, encodeTiff } from './encodePicture.ts';
import { openCodes, openPicture } from './pictureLibrary.ts';

const folder = new URL('../../../tests/published/data/decoder/', import.meta.url);
const load = (name: string) => new Uint8Array(readFileSync(new URL(name, folder)));

async function decoded(bytes: Uint8Array, name = 'picture'): Promise<Photograph> {
  const result = await decodePhotograph(bytes, name);
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
}

async function refusal(bytes: Uint8Array, name: string): Promise<{ code: string; message: string }> {
  const result = await decodePhotograph(bytes, name);
  if (result.ok) throw new Error(`${name} was read`);
  return result.error;
}

function differences(first: Photograph, second: Photograph): Float64Array {
  return Float64Array.from(first.codes as ArrayLike<number>, (code, index) =>
    Math.abs(code - second.codes[index]!),
  );
}

function largestDifference(first: Photograph, second: Photograph): number {
  return differences(first, second).reduce((most, value) => Math.max(most, value), 0);
}

function gradient(widthPx: number, heightPx: number, channels: 1 | 3): Uint8Array {
  return Uint8Array.from({ length: widthPx * heightPx * channels }, (_, index) => (index * 7) % 256);
}

describe('pictures that must be read rightly', () => {
  it.each([2, 3, 4, 5, 6, 7, 8])(
    'orientation %i is the same upright picture within 3 levels',
    async (tag) => {
      const upright = await decoded(load('made-orientation-1.jpg'));
      const turned = await decoded(load(`made-orientation-${tag}.jpg`));
      expect([turned.widthPx, turned.heightPx, turned.channels]).toEqual([464, 832, 3]);
      expect(largestDifference(upright, turned)).toBeLessThanOrEqual(3);
    },
  );

  it('HEIC shows the same picture as the JPEG it was made from', async () => {
    const jpeg = await decoded(load('made-orientation-1.jpg'));
    const heic = await decoded(load('made-heic.heic'));
    expect([heic.widthPx, heic.heightPx, heic.channels]).toEqual([464, 832, 3]);
    const sum = differences(heic, jpeg).reduce((total, value) => total + value, 0);
    // Two lossy codecs differ by about a level on average; a shift by a pixel differs by several.
    expect(sum / heic.codes.length).toBeLessThan(2);
  });

  it('16-bit grey TIFF keeps 16 bits and one channel, sRGB-coded', async () => {
    const photograph = await decoded(load('made-grey-16bit.tif'));
    expect([photograph.widthPx, photograph.heightPx, photograph.channels]).toEqual([479, 825, 1]);
    expect(photograph.codes).toBeInstanceOf(Uint16Array);
    expect(photograph.codes.buffer).toBeInstanceOf(SharedArrayBuffer);
    expect(photograph.toLinear).toHaveLength(65536);
    expect(photograph.toLinear[65535]).toBe(1);
  });

  it('8-bit grey PNG keeps one channel, code by code', async () => {
    const photograph = await decoded(load('grey-8bit.png'));
    expect([photograph.widthPx, photograph.heightPx, photograph.channels]).toEqual([500, 500, 1]);
    expect(photograph.codes).toBeInstanceOf(Uint8Array);
    const codes = gradient(40, 30, 1);
    const again = await decoded(await encodePng({ widthPx: 40, heightPx: 30, channels: 1, codes }));
    expect(Array.from(again.codes)).toEqual(Array.from(codes));
  });

  it('transparent pictures are laid over white', async () => {
    const photograph = await decoded(load('alpha.png'));
    expect([photograph.widthPx, photograph.channels]).toEqual([500, 3]);
    expect(Math.min(...photograph.codes.subarray(0, 30))).toBeGreaterThanOrEqual(250);
  });

  it('16-bit colour goes through PNG and TIFF code by code', async () => {
    const codes = Uint16Array.from({ length: 32 * 20 * 3 }, (_, index) => (index * 9973) % 65536);
    const picture = { widthPx: 32, heightPx: 20, channels: 3, codes } as const;
    for (const bytes of [await encodePng(picture), await encodeTiff(picture)]) {
      const again = await decoded(bytes);
      expect(again.codes).toBeInstanceOf(Uint16Array);
      expect(Array.from(again.codes)).toEqual(Array.from(codes));
    }
  });

  it('WebP is read', async () => {
    const codes = new Uint8Array(64 * 48 * 3).fill(128);
    const photograph = await decoded(await openCodes(codes, 64, 48, 3).webp({ lossless: true }).toBuffer());
    expect([photograph.widthPx, photograph.heightPx, photograph.codes[0]]).toEqual([64, 48, 128]);
  });
});

/** The colour computed by colorjs.io from the published primaries, not from the embedded profile. */
function expectedCodes(space: string, light: readonly number[]): number[] {
  const encoded = new Color(space, light as [number, number, number]).to('srgb').coords;
  return encoded.map((value) => Math.min(Math.max(value ?? 0, 0), 1) * 65535);
}

describe('embedded profiles', () => {
  it.each([
    ['rgb-16bit-linear-709.png', 'srgb-linear'],
    ['rgb-16bit-linear-2020.png', 'rec2020-linear'],
    ['rgb-16bit-linear-acescg.png', 'acescg'],
  ])('%s gives the sRGB values that its colour space implies', async (name, space) => {
    const bytes = load(name);
    const raw = await openPicture(bytes).toColourspace('rgb16').raw({ depth: 'ushort' }).toBuffer();
    const light = new Uint16Array(raw.buffer, raw.byteOffset, raw.byteLength / 2);
    const photograph = await decoded(bytes, name);
    for (let pixel = 0; pixel < 64 * 64; pixel += 37) {
      const from = [0, 1, 2].map((channel) => light[3 * pixel + channel]! / 65535);
      const expected = expectedCodes(space, from);
      for (const channel of [0, 1, 2]) {
        const error = Math.abs(photograph.codes[3 * pixel + channel]! - expected[channel]!);
        // 0.1 % of full scale: the profiles' numbers carry 16 bits and two D65 whites are about.
        expect(error, `pixel ${pixel} channel ${channel}`).toBeLessThanOrEqual(66);
      }
    }
  });

  it('a Display P3 photograph is brought into sRGB', async () => {
    const codes = new Uint8Array(32 * 32 * 3);
    for (let index = 0; index < codes.length; index += 3) codes.set([180, 120, 60], index);
    const bytes = await openCodes(codes, 32, 32, 3).png().withIccProfile('p3').toBuffer();
    const stored = await openPicture(bytes).raw().toBuffer();
    const photograph = await decoded(bytes);
    const from = [...stored.subarray(0, 3)].map((code) => code / 255) as [number, number, number];
    const expected = new Color('p3', from).to('srgb').coords.map((value) => (value ?? 0) * 255);
    for (const channel of [0, 1, 2]) {
      expect(Math.abs(photograph.codes[channel]! - expected[channel]!)).toBeLessThanOrEqual(1);
    }
    expect(Array.from(photograph.codes.subarray(0, 3))).not.toEqual([...stored.subarray(0, 3)]);
  });
});

describe('pictures that must be refused, with a sentence', () => {
  it.each([
    ['truncated.jpg', 'picture-damaged'],
    ['made-heic-truncated.heic', 'picture-damaged'],
    ['truncated-at-5000.jp2', 'picture-unknown-kind'],
    ['grey-16bit-raster.tif', 'picture-coding'],
  ])('%s is refused as %s', async (name, code) => {
    const error = await refusal(load(name), name);
    expect(error.code).toBe(code);
    expect(error.message).toContain(name);
    expect(error.message).not.toMatch(/[{}\n]/);
  });

  it('empty, text, and renamed files', async () => {
    expect((await refusal(new Uint8Array(0), 'a.jpg')).code).toBe('file-empty');
    expect((await refusal(new TextEncoder().encode('not a picture at all'), 'a.jpg')).code).toBe(
      'picture-unknown-kind',
    );
    expect((await refusal(new TextEncoder().encode('GIF89a......'), 'a.jpg')).message).toContain('GIF');
    const png = await encodePng({ widthPx: 40, heightPx: 30, channels: 1, codes: gradient(40, 30, 1) });
    expect((await decodePhotograph(png, 'named-wrongly.jpg')).ok).toBe(true);
  });

  it.each(['png', 'tiff', 'webp', 'jpeg'] as const)('a %s cut off half way', async (format) => {
    const noise = Uint8Array.from({ length: 200 * 200 * 3 }, (_, index) => (index * index * 31) % 251);
    const whole = await openCodes(noise, 200, 200, 3).toFormat(format).toBuffer();
    expect((await refusal(whole.subarray(0, whole.length / 2), `half.${format}`)).code).toBe(
      'picture-damaged',
    );
  });

  it('printing colours', async () => {
    const bytes = await openCodes(gradient(40, 30, 3), 40, 30, 3)
      .toColourspace('cmyk')
      .jpeg()
      .toBuffer();
    expect((await refusal(bytes, 'flyer.jpg')).code).toBe('picture-cmyk');
  });

  it('a bomb, judged by its header alone', async () => {
    const bytes = await encodePng({
      widthPx: 9000,
      heightPx: 9000,
      channels: 1,
      codes: new Uint8Array(81e6),
    });
    expect(bytes.length).toBeLessThan(1e6);
    const error = await refusal(bytes, 'bomb.png');
    expect(error.code).toBe('picture-too-large');
    expect(error.message).toBe('bomb.png is 9000 x 9000 px; at most 60 megapixels are read.');
  });

  it('too many bytes, too few pixels, more than one picture', async () => {
    const limits = { megapixels: 60, megabytes: 0.0001 };
    const png = await encodePng({ widthPx: 40, heightPx: 30, channels: 1, codes: gradient(40, 30, 1) });
    const heavy = await decodePhotograph(png, 'a.png', limits);
    expect(heavy.ok ? '' : heavy.error.code).toBe('file-too-large');
    const tiny = await encodePng({ widthPx: 8, heightPx: 8, channels: 1, codes: gradient(8, 8, 1) });
    expect((await refusal(tiny, 'tiny.png')).code).toBe('picture-too-small');
    const least = { widthPx: 16, heightPx: 100, channels: 1, codes: gradient(16, 100, 1) } as const;
    const exact = { megapixels: 0.0016, megabytes: 1 };
    const small = await decodePhotograph(await encodePng(least), 'small.png', exact);
    expect(small.ok).toBe(true);
    for (const [widthPx, heightPx, code] of [
      [15, 100, 'picture-too-small'],
      [18, 89, 'picture-too-large'],
    ] as const) {
      const codes = gradient(widthPx, heightPx, 1);
      const read = await decodePhotograph(
        await encodePng({ ...least, widthPx, heightPx, codes }),
        'b.png',
        exact,
      );
      expect(read.ok ? '' : read.error.code).toBe(code);
    }
    const page = await encodeTiff({ widthPx: 40, heightPx: 30, channels: 1, codes: gradient(40, 30, 1) });
    expect((await decodePhotograph(page, 'one.tif')).ok).toBe(true);
    expect((await refusal(twoPages(page), 'two.tif')).code).toBe('picture-animated');
  });
});

/** A little-endian TIFF whose only directory is followed by a copy of itself. */
function twoPages(page: Uint8Array): Uint8Array {
  const view = new DataView(page.buffer, page.byteOffset, page.byteLength);
  const directory = view.getUint32(4, true);
  const size = 2 + 12 * view.getUint16(directory, true) + 4;
  const even = page.length + (page.length % 2);
  const pages = new Uint8Array(even + size);
  pages.set(page);
  pages.set(page.subarray(directory, directory + size), even);
  new DataView(pages.buffer).setUint32(directory + size - 4, even, true);
  return pages;
}
