import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { InkEntry } from '../../records/ink.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { InkQuery } from '../../store/repositories/inkRepository.ts';
import { badMark } from '../badMark.ts';
import { inkEntryOf } from './inkEntryOf.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'inks' | 'works'>;
}

/** The failure for a mix of ink that is not there. */
export function noSuchInk(): Failure {
  return failure('not-found', { what: 'such mix of ink' });
}

/** A page of mixes, newest first; `body-malformed` where `after` marks no place. */
export async function listInks(
  { store }: Parts,
  query: InkQuery,
): Promise<Result<{ readonly inks: readonly InkEntry[]; readonly next: string | null }>> {
  const page = await store.inks.list(query);
  if (page === null) return badMark();
  const inks: InkEntry[] = [];
  for (const ink of page.inks) inks.push(await inkEntryOf(store.works, ink));
  return ok({ inks, next: page.next });
}

/** One mix, put by or not; or `not-found`. */
export async function readInk({ store }: Parts, id: string): Promise<Result<InkEntry>> {
  const ink = await store.inks.find(id);
  return ink === null ? fail(noSuchInk()) : ok(await inkEntryOf(store.works, ink));
}
