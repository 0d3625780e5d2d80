import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import { readGrey, writeGrey } from './greyPicture.ts';

export const keptFolder = fileURLToPath(new URL('kept/', import.meta.url));

/** `UPDATE_GALLERY=1` writes the kept files afresh instead of comparing with them. */
const updating = process.env.UPDATE_GALLERY === '1';

/** Levels of 255 by which a pixel may differ: edges of letters are smoothed a little differently by each version. */
const smoothingLevels = 48;

/** Holds text against the kept file of that name, to the letter. */
export function expectKeptText(name: string, text: string): void {
  if (updating) {
    keep(name, text);
    return;
  }
  expect(text, `${name} differs from the kept file; UPDATE_GALLERY=1 writes it afresh`).toBe(
    readFileSync(join(keptFolder, name), 'utf8'),
  );
}

/** Holds a grey PNG against the kept one; names the first bad pixel and writes the difference as a picture. */
export async function expectKeptPicture(name: string, png: Uint8Array): Promise<void> {
  if (updating) return keep(name, png);
  expect(existsSync(join(keptFolder, name)), `${name} is not kept yet`).toBe(true);
  const kept = await readGrey(readFileSync(join(keptFolder, name)));
  const made = await readGrey(png);
  expect([made.widthPx, made.heightPx], `size of ${name}`).toEqual([kept.widthPx, kept.heightPx]);
  const difference = kept.codes.map((code, pixel) => Math.abs(code - made.codes[pixel]!));
  const first = difference.findIndex((levels) => levels > smoothingLevels);
  if (first < 0) return;
  const file = join(tmpdir(), `stonetone-difference-${name}`);
  writeFileSync(file, await writeGrey({ ...kept, codes: difference.map((levels) => 255 - levels) }));
  const place = `${first % kept.widthPx}, ${Math.floor(first / kept.widthPx)}`;
  expect.fail(
    `${name}: pixel ${place} is ${made.codes[first]}, kept as ${kept.codes[first]}; the difference is in ${file}`,
  );
}

function keep(name: string, content: string | Uint8Array): void {
  mkdirSync(keptFolder, { recursive: true });
  writeFileSync(join(keptFolder, name), content);
}
