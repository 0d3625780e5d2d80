import { fail, ok, type Result } from '../../foundation/result.ts';
import type { BlindSitting } from '../../records/patchReading.ts';
import type { Store } from '../../store/openStore.ts';
import { sittingsIn } from '../../studio/trials/reading/foldTestStoneEvents.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';

/** Blind readings of a test stone, oldest first; or `not-found`. */
export async function readSittings(
  { store }: { readonly store: Pick<Store, 'testStones'> },
  id: string,
): Promise<Result<readonly BlindSitting[]>> {
  const stone = await store.testStones.find(id);
  if (stone === null) return fail(noSuchTestStone());
  return ok(sittingsIn(await store.testStones.events(id), stone));
}
