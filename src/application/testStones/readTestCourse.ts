import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestCourse } from '../../records/testCourse.ts';
import type { Store } from '../../store/openStore.ts';
import { lineStages } from '../../studio/bench/lineStages.ts';
import { testCourse } from '../../studio/trials/bench/testCourse.ts';
import { kindsOf } from './benchRequest.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';

/**
 * Every step of a test stone for one pair of hands, with the newest etch plan of its work; or `not-found`. Whoever etches reads no
 * media and whoever draws no etches, so it may be read while the list is sealed.
 */
export async function readTestCourse(
  { store }: { readonly store: Pick<Store, 'testStones' | 'plans'> },
  id: string,
  hands: TestCourse['for'],
): Promise<Result<TestCourse>> {
  const stone = await store.testStones.find(id);
  if (stone === null) return fail(noSuchTestStone());
  const plan = hands === 'draw' || stone.workId === null ? null : await store.plans.newestFirst(stone.workId);
  return ok({ ...testCourse(stone, kindsOf(stone), lineStages, hands), plan });
}
