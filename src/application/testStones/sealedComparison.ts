import { type Failure, failure } from '../../foundation/failure.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { StoredComparison } from '../../store/repositories/storedComparison.ts';
import type { ReadingParts } from './readTestStoneReading.ts';
import { listStateOf } from './shownTestStone.ts';

const stonesEach = 100;
/** What a zone is said to be drawn with while nobody may know. */
const sealedMedium = 'not known';

/** Test stones whose lists are sealed, newest first. */
export async function* sealedTestStones(
  parts: ReadingParts,
): AsyncGenerator<{ readonly stone: TestStone; readonly untold: number }> {
  let after: string | null = null;
  do {
    const found: Awaited<ReturnType<typeof parts.store.testStones.list>> = await parts.store.testStones.list({
      search: '',
      putBy: 'all',
      after,
      limit: stonesEach,
    });
    for (const stone of found?.page ?? []) {
      const list = await listStateOf(parts, stone);
      if (list?.sealed) yield { stone, untold: list.untold };
    }
    after = found?.next ?? null;
  } while (after !== null);
}

/** Why what a comparison says of media may not be seen yet: it reads a print of a test stone whose list is sealed; else null. */
export async function sealOfComparison(
  parts: ReadingParts,
  { id, request }: Pick<StoredComparison, 'id' | 'request'>,
): Promise<Failure | null> {
  if (request.only !== 'patches') return null;
  for await (const { stone, untold } of sealedTestStones(parts)) {
    const reads = stone.prints.some(({ comparisonId }) => comparisonId === id);
    // an earlier reading of it, that another took the place of
    const readBefore = stone.drawn?.photograph === request.stone.photograph;
    if (reads || readBefore) return failure('list-sealed', { what: stone.name, untold });
  }
  return null;
}

/** A comparison without what its zones were drawn with, and without the files that say so. */
export function sealedEntry(entry: ComparisonEntry): ComparisonEntry {
  const covered = <Zone extends { readonly medium: string }>(zone: Zone): Zone => ({
    ...zone,
    medium: sealedMedium,
  });
  const { request, record, files } = entry;
  return {
    ...entry,
    request: { ...request, zones: request.zones.map(covered) },
    record: record && { ...record, zones: record.zones.map(covered), toneCurves: [] },
    files: files.filter(isPicture),
  };
}

/** Whether a file of a comparison is a picture: it says nothing of media. */
export function isPicture(name: string): boolean {
  return /\.(jpg|png)$/.test(name);
}
