import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Photograph } from '../photograph.ts';
import { decodePhotograph } from './decodePhotograph.ts';
import { fullSizeLevel, previewWidthsPx, writePyramid } from './writePyramid.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-pyramid-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

/** Left half dark, right half light, so that a swap of columns and rows shows. */
function halves(
  widthPx: number,
  heightPx: number,
  codes: Uint8Array | Uint16Array,
  light: number,
): Photograph {
  for (let index = 0; index < codes.length; index += 1) {
    codes[index] = index % widthPx < widthPx / 2 ? 0 : light;
  }
  return { widthPx, heightPx, channels: 1, codes, toLinear: new Float32Array(0) };
}

async function pictureAt(...path: string[]): Promise<Photograph> {
  const decoded = await decodePhotograph(await readFile(join(folder, ...path)), path.join('/'));
  if (!decoded.ok) throw new Error(decoded.error.message);
  return decoded.value;
}

it('cuts the full size into tiles of 512 px, the last ones narrower', async () => {
  await writePyramid(halves(1100, 600, new Uint8Array(1100 * 600), 200), folder);
  const level = fullSizeLevel(1100, 600);
  expect(level).toBe(11);
  const tiles = await readdir(join(folder, 'tiles_files', String(level)));
  expect(tiles.sort()).toEqual(['0_0.jpeg', '0_1.jpeg', '1_0.jpeg', '1_1.jpeg', '2_0.jpeg', '2_1.jpeg']);
  const first = await pictureAt('tiles_files', '11', '0_0.jpeg');
  const last = await pictureAt('tiles_files', '11', '2_1.jpeg');
  expect([first.widthPx, first.heightPx]).toEqual([512, 512]);
  expect([last.widthPx, last.heightPx]).toEqual([1100 - 1024, 600 - 512]);
  expect(first.codes[0]).toBeLessThan(10);
  expect(last.codes[0]).toBeGreaterThan(190);
  const levels = (await readdir(join(folder, 'tiles_files'))).filter((name) => /^\d+$/.test(name));
  expect(levels.length).toBe(level + 1);
});

it('makes previews no wider than asked, never enlarged, from 16-bit codes too', async () => {
  await writePyramid(halves(1000, 500, new Uint16Array(1000 * 500), 51_400), folder);
  const widths = [];
  for (const width of previewWidthsPx) {
    const preview = await pictureAt(`preview-${width}.jpg`);
    widths.push(preview.widthPx);
    expect(preview.codes.at(-1)).toBeGreaterThan(195);
    expect(preview.codes.at(-1)).toBeLessThan(206);
    expect(preview.codes[0]).toBeLessThan(6);
  }
  expect(widths).toEqual([320, 640, 1000, 1000]);
});
