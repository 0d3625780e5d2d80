import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Edition } from '../../records/edition.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { noSuchWork } from '../works/findWork.ts';

type Store = Pick<KeptRecords, 'works' | 'editions' | 'ledgers'>;

/** The failure for an edition that is not there. */
export function noSuchEdition(): Failure {
  return failure('not-found', { what: 'such edition' });
}

/** A work's editions, newest first; or `not-found`. */
export async function listEditions(
  { store }: { readonly store: Pick<Store, 'works' | 'editions'> },
  workId: string,
): Promise<Result<readonly Edition[]>> {
  if ((await store.works.find(workId)) === null) return fail(noSuchWork());
  return ok(await store.editions.ofWork(workId));
}

/** More editions in use than a room has. */
const mostInUse = 500;

/** Editions in use, whichever work they are of, newest first. */
export function listEditionsInUse({
  store,
}: {
  readonly store: Pick<Store, 'editions'>;
}): Promise<readonly Edition[]> {
  return store.editions.inUse(mostInUse);
}

/** One edition, put by or not; or `not-found`. */
export async function readEdition(
  { store }: { readonly store: Pick<Store, 'editions'> },
  id: string,
): Promise<Result<Edition>> {
  const edition = await store.editions.find(id);
  return edition === null ? fail(noSuchEdition()) : ok(edition);
}

/** All that an edition's ledger holds, in order; or `not-found`. */
export async function readLedger(
  { store }: { readonly store: Pick<Store, 'editions' | 'ledgers'> },
  id: string,
): Promise<Result<readonly LedgerEntry[]>> {
  if ((await store.editions.find(id)) === null) return fail(noSuchEdition());
  return ok(await store.ledgers.entries(id));
}
