import { ok, type Result } from '../../foundation/result.ts';
import type { TestStoneAnswer, TrialDeviation } from '../../records/testStoneAnswer.ts';
import { withOpenings } from '../../studio/trials/answer/openedEarly.ts';
import type { ReadRunParts } from '../bench/readRun.ts';
import { limitConcurrency } from '../threads/limitConcurrency.ts';
import { threadModule } from '../threads/runInThread.ts';
import { type Waiting, workInThread } from '../threads/workInThread.ts';
import { readLists } from './readLists.ts';
import { readLogDeviations } from './readLogDeviations.ts';
import { readTestStoneFindings } from './readTestStoneFindings.ts';
import type { ReadingParts } from './readTestStoneReading.ts';

/** An answer may take all of a core for a second: one at a time leaves the other for everybody else. */
const oneAtATime = limitConcurrency(1);

/** Where readings and logs are kept. */
export type AnswerParts = ReadingParts & ReadRunParts;

/**
 * What test stones answer together, each by the print that it is judged by; stones that aren't read count for nothing. The
 * logs of their works say what went otherwise than planned. Worked out in a thread of its own.
 * @returns `stopped` where who waits ended it, `list-sealed` where nobody may see yet what patches of one got, `not-found` for a stone that is not kept here, `internal` where the thread broke
 */
export async function readTestStoneAnswer(
  parts: AnswerParts,
  ids: readonly string[],
  waiting: Waiting | null = null,
): Promise<Result<TestStoneAnswer>> {
  const stones = await readTestStoneFindings(parts, ids);
  if (!stones.ok) return stones;
  const lists = await readLists(parts, ids);
  if (!lists.ok) return lists;
  const module = threadModule(import.meta.url, 'testStoneAnswerThread');
  const deviations: TrialDeviation[] = [];
  for (const [index, id] of [...new Set(ids)].entries()) {
    const kept = await parts.store.testStones.find(id);
    deviations.push(...(await readLogDeviations(parts, kept?.workId ?? null, stones.value[index]!)));
  }
  const input = { stones: stones.value, deviations };
  const answered = await workInThread<TestStoneAnswer>(oneAtATime, module, input, waiting);
  return answered.ok ? ok(withOpenings(answered.value, lists.value)) : answered;
}
