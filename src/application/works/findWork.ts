import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { workEntryOf } from './workEntryOf.ts';

/** The failure for a work that is not there. */
export function noSuchWork(): Failure {
  return failure('not-found', { what: 'such work' });
}

/** One work whole, put by or not; or `not-found`. */
export async function readWork(
  { store }: { readonly store: Pick<KeptRecords, 'stones' | 'works'> },
  id: string,
): Promise<Result<WorkEntry>> {
  const work = await store.works.find(id);
  return work === null ? fail(noSuchWork()) : ok(await workEntryOf(store, work));
}
