import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { KitEntry, LastInHand } from '../../records/kit.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { KitPage, KitQuery } from '../../store/repositories/kitRepository.ts';
import { badMark } from '../badMark.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'kit'>;
}

/** The failure for a tool or set-up that is not there. */
export function noSuchKit(): Failure {
  return failure('not-found', { what: 'such tool or set-up' });
}

/** A page of tools and set-ups, newest first; `body-malformed` where `after` marks no place. */
export async function listKit({ store }: Parts, query: KitQuery): Promise<Result<KitPage>> {
  const page = await store.kit.list(query);
  return page === null ? badMark() : ok(page);
}

/** One tool or set-up, put by or not; or `not-found`. */
export async function readKit({ store }: Parts, id: string): Promise<Result<KitEntry>> {
  const entry = await store.kit.find(id);
  return entry === null ? fail(noSuchKit()) : ok(entry);
}

/** What was last in hand in any run, one of each tool. */
export function lastInHand({ store }: Parts): Promise<readonly LastInHand[]> {
  return store.kit.lastInHand();
}
