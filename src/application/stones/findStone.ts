import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { StoneEntry } from '../../records/stoneEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { stoneEntryOf } from './stoneEntryOf.ts';

/** The failure for a stone that is not there. */
export function noSuchStone(): Failure {
  return failure('not-found', { what: 'such stone' });
}

/** One stone whole, put by or not; or `not-found`. */
export async function readStone(
  { store }: { readonly store: Pick<KeptRecords, 'stones' | 'works' | 'runs'> },
  id: string,
): Promise<Result<StoneEntry>> {
  const stone = await store.stones.find(id);
  return stone === null ? fail(noSuchStone()) : ok(await stoneEntryOf(store, stone));
}
