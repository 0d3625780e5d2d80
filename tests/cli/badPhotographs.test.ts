import { readFileSync } from 'node:fs';
import { mkdir, readdir } from 'node:fs/promises';
import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FailureCode } from '../../src/foundation/failureRegistry.ts';
import { openCodes } from '../../src/imaging/codecs/pictureLibrary.ts';
import {
  aBench,
  type Bench,
  expectFailure,
  expectRefusedInput,
  pairWords,
  picture,
  stonetone,
} from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const wholePrint = readFileSync(picture('measured-print.jpg'));
const decoderPicture = (name: string) =>
  readFileSync(new URL(`../published/data/decoder/${name}`, import.meta.url));

/** A PNG that claims a size and holds nothing: refused by its header, or not at all. */
function claimedPng(widthPx: number, heightPx: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(widthPx, 0);
  header.writeUInt32BE(heightPx, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const chunk = (name: string, data: Buffer) => {
    const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
    const whole = Buffer.alloc(named.length + 8);
    whole.writeUInt32BE(data.length, 0);
    named.copy(whole, 4);
    whole.writeUInt32BE(crc32(named), named.length + 4);
    return whole;
  };
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', Buffer.from([0x78, 0x9c, 3, 0, 0, 0, 0, 1])),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

const grey = (widthPx: number, heightPx: number) =>
  openCodes(new Uint8Array(widthPx * heightPx * 3).fill(180), widthPx, heightPx, 3);

async function animation(): Promise<Uint8Array> {
  const frames = [await grey(300, 300).png().toBuffer(), await grey(300, 300).negate().png().toBuffer()];
  return sharp(frames, { join: { animated: true } })
    .webp()
    .toBuffer();
}

const cases: readonly (readonly [string, FailureCode, RegExp, () => Promise<Uint8Array> | Uint8Array])[] = [
  ['zero bytes', 'file-empty', /print\.jpg/, () => new Uint8Array(0)],
  [
    'a text file renamed',
    'picture-unknown-kind',
    /print\.jpg.*text/,
    () => Buffer.from('Low Water, third state\n'),
  ],
  [
    'a JPEG cut off half way',
    'picture-damaged',
    /print\.jpg/,
    () => wholePrint.subarray(0, wholePrint.length / 2),
  ],
  ['a JPEG cut off in its header', 'picture-damaged', /print\.jpg/, () => wholePrint.subarray(0, 300)],
  ['a HEIC cut off', 'picture-damaged', /print\.jpg/, () => decoderPicture('made-heic-truncated.heic')],
  ['a JPEG 2000', 'picture-unknown-kind', /JPEG 2000/, () => decoderPicture('truncated-at-5000.jp2')],
  ['signed numbers', 'picture-coding', /print\.jpg/, () => decoderPicture('grey-16bit-raster.tif')],
  ['printing colours', 'picture-cmyk', /CMYK/, () => grey(300, 400).toColourspace('cmyk').jpeg().toBuffer()],
  ['an animation', 'picture-animated', /print\.jpg/, animation],
  [
    'a gigantic size in the header',
    'picture-too-large',
    /60000 x 60000 px/,
    () => claimedPng(60_000, 60_000),
  ],
  [
    'noise',
    'picture-unknown-kind',
    /print\.jpg/,
    () => Uint8Array.from({ length: 5000 }, (_, i) => (i * i) % 251),
  ],
  ['a stamp of a picture', 'picture-too-small', /150 x 150 px/, () => grey(150, 150).png().toBuffer()],
];

describe('photographs that cannot be measured', () => {
  it.each(cases)('%s is refused as %s', async (_, code, mentions, make) => {
    const proof = await bench.write('print.jpg', await make());
    await expectRefusedInput(bench, pairWords('measured', { proof, 'proof-corners': null }), code, mentions);
  });

  it.each(['stone', 'proof', 'stone-repeat', 'proof-repeat', 'stone-flat', 'proof-flat', 'zones', 'chips'])(
    'a missing file for --%s is named',
    async (name) => {
      const words = pairWords('measured', { [name]: bench.path('not there.jpg') });
      await expectRefusedInput(bench, words, 'file-missing', /not there\.jpg/);
    },
  );

  it.each(['stone-repeat', 'proof-flat'])('a broken file for --%s is refused too', async (name) => {
    const broken = await bench.write('white sheet.jpg', 'not a picture at all');
    const words = pairWords('measured', { [name]: broken });
    await expectRefusedInput(bench, words, 'picture-unknown-kind', /white sheet\.jpg/);
  });

  it('leave an earlier result as it was', async () => {
    await mkdir(bench.path('earlier'));
    await bench.write('earlier/comparison.json', 'an earlier one');
    const proof = await bench.write('print.jpg', wholePrint.subarray(0, 40_000));
    const out = bench.path('earlier');
    expectFailure(await stonetone('compare', ...pairWords('measured', { proof, out })), 'picture-damaged');
    expect(await readdir(out)).toEqual(['comparison.json']);
    expect(readFileSync(bench.path('earlier/comparison.json'), 'utf8')).toBe('an earlier one');
  });

  it('a folder in place of a photograph', async () => {
    await expectRefusedInput(bench, pairWords('measured', { stone: bench.folder }), 'file-unreadable');
  });
});
