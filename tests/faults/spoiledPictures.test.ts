import { expect, it, vi } from 'vitest';
import { memoryLimitMegabytes, readSpoiledPictures } from './pictures/readSpoiledPictures.ts';

vi.setConfig({ testTimeout: 120_000 });

it('150 spoiled pictures and the decoder set: a picture or a clear sentence each, within the memory allowed', async () => {
  const seed = Number(process.env.PICTURES_SEED ?? Date.now() % 2 ** 20);
  console.log(`spoiled pictures: seed ${seed}`);
  const { ends, mostMegabytes, faults } = await readSpoiledPictures(seed, 160);
  expect(faults, `seed ${seed}`).toEqual([]);
  expect(mostMegabytes).toBeLessThan(memoryLimitMegabytes);
  expect([...ends.values()].reduce((sum, count) => sum + count, 0)).toBe(160);
  expect(ends.get('picture-damaged')).toBeGreaterThan(20);
});
