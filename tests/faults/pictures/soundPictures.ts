import { readFileSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { openCodes, type PictureHandle } from '../../../src/imaging/codecs/pictureLibrary.ts';

/** A good small file, and how it is called. */
export interface SoundPicture {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const decoderSet = new URL('../../published/data/decoder/', import.meta.url);
const widthPx = 96;
const heightPx = 80;

function drawn(channels: 1 | 3, bits: 8 | 16): PictureHandle {
  const most = bits === 8 ? 256 : 65536;
  const code = (_: unknown, index: number) => (index * index * 31 + 7 * index) % most;
  const from = { length: widthPx * heightPx * channels };
  const codes = bits === 8 ? Uint8Array.from(from, code) : Uint16Array.from(from, code);
  return openCodes(codes, widthPx, heightPx, channels);
}

/** Good small files of every kind that is read, in the codings that cameras, scanners and programs write. */
export async function soundPictures(): Promise<readonly SoundPicture[]> {
  const made: readonly (readonly [string, PictureHandle])[] = [
    ['plain.jpg', drawn(3, 8).jpeg()],
    ['grey.jpg', drawn(1, 8).toColourspace('b-w').jpeg()],
    ['progressive.jpg', drawn(3, 8).withIccProfile('p3').jpeg({ progressive: true })],
    ['placed.jpg', drawn(3, 8).withExif(place).withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"/>').jpeg()],
    ['grey.png', drawn(1, 8).toColourspace('b-w').png()],
    ['palette.png', drawn(3, 8).png({ palette: true, colours: 16 })],
    ['deep.png', drawn(3, 16).toColourspace('rgb16').withIccProfile('p3').png({ progressive: true })],
    ['see-through.png', drawn(3, 8).ensureAlpha(0.5).withExif(place).png()],
    ['plain.tif', drawn(3, 8).tiff({ compression: 'none' })],
    [
      'packed.tif',
      drawn(1, 16).toColourspace('grey16').tiff({ compression: 'lzw', predictor: 'horizontal' }),
    ],
    [
      'tiled.tif',
      drawn(3, 8).withExif(place).tiff({ compression: 'deflate', tile: true, tileWidth: 32, tileHeight: 32 }),
    ],
    ['as-jpeg.tif', drawn(3, 8).tiff({ compression: 'jpeg' })],
    ['large-offsets.tif', drawn(3, 8).tiff({ compression: 'deflate', bigtiff: true })],
    ['lossy.webp', drawn(3, 8).webp()],
    ['lossless.webp', drawn(3, 8).webp({ lossless: true })],
    ['placed.webp', drawn(3, 8).ensureAlpha(0.5).withExif(place).withXmp('<x/>').webp()],
  ];
  const pictures = made.map(async ([name, picture]) => ({
    name,
    bytes: new Uint8Array(await picture.toBuffer()),
  }));
  const heic = new Uint8Array(readFileSync(new URL('made-heic.heic', decoderSet)));
  return [
    ...(await Promise.all(pictures)),
    { name: 'plain.heic', bytes: heic },
    { name: 'again.heic', bytes: heic },
  ];
}

const place = { IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '1/1 2/1 3/1' } };

/** How often a piece is repeated in a swarm: 10 to 40 MB of pieces that hold nothing. */
const swarm = 2_500_000;

function repeated(piece: Uint8Array): Buffer {
  return Buffer.alloc(piece.length * swarm, piece);
}

/** A piece of a PNG (length, type, check sum) or RIFF (type, length) that is empty. */
const emptyChunk = {
  png: Buffer.from('\0\0\0\0prVt\0\0\0\0', 'latin1'),
  webp: Buffer.from('JUNK\0\0\0\0', 'latin1'),
};

/** Small pictures with millions of empty pieces before or behind the picture itself, each of them well-formed. */
export async function swarmingPictures(): Promise<readonly SoundPicture[]> {
  emptyChunk.png.writeUInt32BE(crc32('prVt'), 8);
  const [jpeg, png, webp] = await Promise.all([
    drawn(3, 8).jpeg().toBuffer(),
    drawn(3, 8).png().toBuffer(),
    drawn(3, 8).webp({ lossless: true }).toBuffer(),
  ]);
  const heic = readFileSync(new URL('made-heic.heic', decoderSet));
  const junk = repeated(Buffer.from('Exif\0\0<x:xmpmeta'));
  const freeBox = Buffer.from('\0\0\0\0free', 'latin1');
  freeBox.writeUInt32BE(8 + junk.length);
  const riff = Buffer.concat([webp, repeated(emptyChunk.webp)]);
  riff.writeUInt32LE(riff.length - 8, 4);
  const pictures: readonly (readonly [string, Buffer])[] = [
    [
      'swarm.jpg',
      Buffer.concat([jpeg.subarray(0, 2), repeated(Buffer.from([0xff, 0xe0, 0, 2])), jpeg.subarray(2)]),
    ],
    ['swarm.png', Buffer.concat([png.subarray(0, 33), repeated(emptyChunk.png), png.subarray(33)])],
    ['swarm.webp', riff],
    ['swarm.heic', Buffer.concat([heic, freeBox, junk])],
  ];
  return pictures.map(([name, bytes]) => ({ name, bytes: new Uint8Array(bytes) }));
}

/** The files of the decoder set, sound and damaged, as they are. */
export function decoderPictures(): readonly SoundPicture[] {
  const names = [
    'truncated.jpg',
    'made-heic-truncated.heic',
    'truncated-at-5000.jp2',
    'grey-16bit-raster.tif',
  ];
  const sound = [
    'alpha.png',
    'grey-8bit.png',
    'made-grey-16bit.tif',
    'made-orientation-6.jpg',
    'rgb-16bit-linear-2020.png',
  ];
  return [...names, ...sound].map((name) => ({
    name,
    bytes: new Uint8Array(readFileSync(new URL(name, decoderSet))),
  }));
}
