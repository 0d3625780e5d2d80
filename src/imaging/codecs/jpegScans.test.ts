import { expect, it } from 'vitest';
import { decodePhotograph } from './decodePhotograph.ts';
import { jpegScanCount, jpegScanEnd } from './jpegScans.ts';
import { openCodes } from './pictureLibrary.ts';

const sidePx = 64;
const jpeg = (progressive: boolean) =>
  openCodes(new Uint8Array(sidePx ** 2).fill(128), sidePx, sidePx, 1)
    .toColourspace('b-w')
    .jpeg({ progressive })
    .toBuffer();

/** A progressive picture whose first two scans, said to be whole, are followed by the second again and again. */
async function scansWithoutEnd(times: number): Promise<Uint8Array> {
  const bytes = Buffer.from(await jpeg(true));
  const starts: number[] = [];
  for (let at = bytes.indexOf('ffda', 'hex'); at >= 0; at = bytes.indexOf('ffda', at + 1, 'hex'))
    starts.push(at);
  const [first, second] = starts as [number, number];
  const end = jpegScanEnd(bytes, second + 10);
  // the last byte of a scan's header: no bits are left for later scans
  bytes[first + 9] = 0;
  bytes[second + 9] = 0;
  const scan = bytes.subarray(second, end);
  return Buffer.concat([
    bytes.subarray(0, end),
    ...Array<Buffer>(times).fill(scan),
    Buffer.from([0xff, 0xd9]),
  ]);
}

it('counts the scans of baseline and progressive pictures, and none where there is no picture', async () => {
  expect(jpegScanCount(await jpeg(false))).toBe(1);
  const scans = jpegScanCount(await jpeg(true));
  expect(scans).toBeGreaterThan(3);
  expect(scans).toBeLessThan(20);
  expect(jpegScanCount(new Uint8Array(40))).toBe(0);
  // a restart between two segments carries no length
  const restarted = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xd0]), (await jpeg(false)).subarray(2)]);
  expect(jpegScanCount(restarted)).toBe(1);
});

it('reads a JPEG of many scans, and refuses one of more than any program writes', async () => {
  expect((await decodePhotograph(await scansWithoutEnd(20), 'some.jpg')).ok).toBe(true);
  const read = await decodePhotograph(await scansWithoutEnd(200), 'many.jpg');
  expect(read).toMatchObject({ ok: false, error: { code: 'picture-damaged' } });
  expect(read.ok ? '' : read.error.message).toContain('202 scans');
});
