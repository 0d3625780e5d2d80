import { ok, type Result } from '../../foundation/result.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { WorkPage, WorkQuery } from '../../store/repositories/workRepository.ts';
import { badMark } from '../badMark.ts';

/** A page of works, last changed first; `body-malformed` where `after` marks no place. */
export async function listWorks(
  { store }: { readonly store: Pick<KeptRecords, 'works'> },
  query: WorkQuery,
): Promise<Result<WorkPage>> {
  const page = await store.works.list(query);
  return page === null ? badMark() : ok(page);
}
