import { ok, type Result } from '../../foundation/result.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { PageQuery } from '../../store/repositories/pageMark.ts';
import type { StonePage } from '../../store/repositories/stoneRepository.ts';
import { badMark } from '../badMark.ts';

/** A page of stones by name; `body-malformed` where `after` marks no place. */
export async function listStones(
  { store }: { readonly store: Pick<KeptRecords, 'stones'> },
  query: PageQuery,
): Promise<Result<StonePage>> {
  const page = await store.stones.list(query);
  return page === null ? badMark() : ok(page);
}
