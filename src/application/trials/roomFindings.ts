import type { TestStoneFindings } from '../../records/testStoneAnswer.ts';
import { mostScatterPatches } from '../../studio/trials/design/roomScatter.ts';
import { readTestStoneFindings } from '../testStones/readTestStoneFindings.ts';
import type { ReadingParts } from '../testStones/readTestStoneReading.ts';

/** As many at a time as a page of a list holds. */
const pageSize = 50;

/** What was read on this room's test stones, the newest first, as many patches as its scatter is told by. */
export async function roomFindings(parts: ReadingParts): Promise<readonly TestStoneFindings[]> {
  const found: TestStoneFindings[] = [];
  let patches = 0;
  for (let after: string | null = null, more = true; more && patches < mostScatterPatches; ) {
    const listed = await parts.store.testStones.list({ search: '', putBy: 'no', after, limit: pageSize });
    for (const { id } of listed?.page ?? []) {
      const read = await readTestStoneFindings(parts, [id]);
      if (!read.ok) continue;
      for (const one of read.value) {
        // Two of one name are two stones all the same.
        found.push({ ...one, stone: id });
        patches += one.findings.length;
      }
      if (patches >= mostScatterPatches) break;
    }
    after = listed?.next ?? null;
    more = after !== null;
  }
  return found;
}
