import { expect, it } from 'vitest';
import type { KnownHolds } from '../../src/records/knownHolds.ts';
import { studioUnderTest } from './studioUnderTest.ts';

it('nothing is known of a room that read nothing', async () => {
  const studio = await studioUnderTest();
  expect(await studio.json<KnownHolds>('/api/known-holds')).toMatchObject({
    schema: 'stonetone/known-holds/1',
    etches: [],
    media: [],
    stones: 0,
  });
});
