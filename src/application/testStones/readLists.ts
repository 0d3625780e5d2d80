import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { OpenedList } from '../../studio/trials/answer/openedEarly.ts';
import type { ReadingParts } from './readTestStoneReading.ts';
import { listStateOf } from './shownTestStone.ts';

/** The lists of planned test stones that were opened by an act of their own; `list-sealed` where one is sealed still. */
export async function readLists(
  parts: ReadingParts,
  ids: readonly string[],
): Promise<Result<readonly OpenedList[]>> {
  const opened: OpenedList[] = [];
  for (const id of new Set(ids)) {
    const stone = await parts.store.testStones.find(id);
    const list = stone && (await listStateOf(parts, stone));
    if (!list) continue;
    if (list.sealed) return fail(failure('list-sealed', { what: stone!.name, untold: list.untold }));
    if (!list.opened) continue;
    const events = await parts.store.testStones.events(id);
    const corrected = events.filter(({ kind, at }) => kind === 'corrected' && at > list.opened!.at).length;
    opened.push({ stone: stone!.name, ...list.opened, corrected });
  }
  return ok(opened);
}
