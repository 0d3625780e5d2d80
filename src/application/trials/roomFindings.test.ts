import { expect, test } from 'vitest';
import type { TestStone } from '../../records/testStone.ts';
import type { ReadingParts } from '../testStones/readTestStoneReading.ts';
import { roomFindings } from './roomFindings.ts';

/** A room of test stones that are all called T-1, listed two to a page; one of them is gone when it is read. */
function aRoom(ids: readonly string[], gone: string): ReadingParts {
  const stone = (id: string) =>
    ({
      id,
      name: 'T-1',
      sizeMm: [100, 100],
      factors: [],
      patches: [],
      prints: [],
      judgedBy: null,
    }) as unknown as TestStone;
  const testStones = {
    list: async ({ after }: { readonly after: string | null }) => {
      const from = after === null ? 0 : ids.indexOf(after) + 1;
      const page = ids.slice(from, from + 2);
      const next = from + 2 < ids.length ? page.at(-1)! : null;
      return { page: page.map((id) => ({ id })), next };
    },
    find: async (id: string) => (id === gone ? null : stone(id)),
    events: async () => [],
  };
  return { store: { testStones } } as unknown as ReadingParts;
}

test('stones of one name are two stones all the same, over every page; one that is gone is passed over', async () => {
  const found = await roomFindings(aRoom(['a', 'b', 'c', 'd', 'e'], 'c'));
  expect(found.map(({ stone }) => stone)).toEqual(['a', 'b', 'd', 'e']);
});
