import { ok, type Result } from '../../foundation/result.ts';
import type { StoneSummary } from '../../records/stoneEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { PageQuery } from '../../store/repositories/pageMark.ts';
import { badMark } from '../badMark.ts';
import type { ReadRunParts } from '../bench/readRun.ts';
import { readGum } from '../bench/readStanding.ts';

export interface StoneList {
  readonly stones: readonly StoneSummary[];
  readonly next: string | null;
}

/** A page of stones by name, each with whether it lies under gum; `body-malformed` where `after` marks no place. */
export async function listStones(
  parts: ReadRunParts & { readonly store: Pick<KeptRecords, 'stones'> },
  query: PageQuery,
): Promise<Result<StoneList>> {
  const page = await parts.store.stones.list(query);
  if (page === null) return badMark();
  const worked = page.stones.flatMap(({ work }) => (work ? [work.id] : []));
  const gum = await readGum(parts, worked);
  const stones = page.stones.map((stone) => ({
    ...stone,
    gum: (stone.work && gum.get(stone.work.id)) ?? null,
  }));
  return ok({ stones, next: page.next });
}
