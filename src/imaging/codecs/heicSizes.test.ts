import { readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { decodePhotograph } from './decodePhotograph.ts';
import { heicSizes } from './heicSizes.ts';

const file = new URL('../../../tests/published/data/decoder/made-heic.heic', import.meta.url);
const load = () => new Uint8Array(readFileSync(file));

/** The file with one of its sizes replaced. */
function resized(side: number): Uint8Array {
  const bytes = Buffer.from(load());
  bytes.writeUInt32BE(side, bytes.indexOf('ispe') + 8);
  return new Uint8Array(bytes);
}

it('finds every size that a HEIC states, and none where there are no boxes', () => {
  const sizes = heicSizes(load());
  expect(sizes.length).toBeGreaterThan(0);
  expect(sizes).toContainEqual([464, 832]);
  expect(heicSizes(new TextEncoder().encode('not a picture at all, at all'))).toEqual([]);
  for (let length = 0; length < 2000; length += 7) heicSizes(load().subarray(0, length));
});

it.each([2 ** 31 - 1, 2 ** 32 - 1, 70_000])('refuses a HEIC that says it is %i px wide', async (side) => {
  const read = await decodePhotograph(resized(side), 'wide.heic');
  expect(read).toMatchObject({ ok: false, error: { code: 'picture-too-large' } });
});

it('says why a HEIC could not be decoded, in its answer and not on the terminal', async () => {
  const log = vi.spyOn(console, 'log').mockImplementation(() => {});
  const read = await decodePhotograph(resized(465), 'other.heic');
  expect(log).not.toHaveBeenCalled();
  log.mockRestore();
  expect(read).toMatchObject({ ok: false, error: { code: 'picture-damaged' } });
  expect(read.ok ? '' : read.error.message).toContain('size');
});
