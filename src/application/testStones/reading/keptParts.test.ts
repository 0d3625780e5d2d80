import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { keptPartsIn, partKey, partsPlaceIn } from './keptParts.ts';

it('keeps a part with its arrays, under a name that is all it depends on', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-parts-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const place = partsPlaceIn({ cache: join(folder, 'cache'), incoming: join(folder, 'incoming') });
  const parts = keptPartsIn(place);
  const key = partKey('stone', [[1, 2]], null);
  expect(partKey('stone', [[1, 3]], null)).not.toBe(key);
  expect(await parts.known(key)).toBeNull();
  const part = { data: Float32Array.of(0.5, Number.NaN), words: 'crayon' };
  await parts.keep(key, part);
  expect(await parts.known(key)).toEqual(part);
  expect(await readdir(place.incoming)).toEqual([]);
  // a damaged one is as good as none, and gives way to the next
  await writeFile(join(place.kept, key), 'torn');
  expect(await parts.known(key)).toBeNull();
  await parts.keep(key, part);
  expect(await parts.known(key)).toEqual(part);
});

it('lets the oldest go, and keeps none where there is no place', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-parts-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const parts = keptPartsIn({ kept: join(folder, 'kept'), incoming: folder });
  for (let i = 0; i < 64; i++) await parts.keep(partKey(i), i);
  expect(await readdir(join(folder, 'kept'))).toHaveLength(60);
  expect(await parts.known(partKey(63))).toBe(63);
  const none = keptPartsIn(null);
  await none.keep(partKey(1), 1);
  expect(await none.known(partKey(1))).toBeNull();
});
