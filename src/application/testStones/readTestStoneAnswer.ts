import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestStoneAnswer } from '../../records/testStoneAnswer.ts';
import { limitConcurrency } from '../threads/limitConcurrency.ts';
import { runInThread, threadModule } from '../threads/runInThread.ts';
import { readTestStoneFindings } from './readTestStoneFindings.ts';
import type { ReadingParts } from './readTestStoneReading.ts';

/** An answer may take all of a core for a second: one at a time leaves the other for everybody else. */
const oneAtATime = limitConcurrency(1);

/**
 * What test stones answer together, each by the print that it is judged by; stones that aren't read count for nothing. Worked
 * out in a thread of its own.
 * @returns `not-found` for a stone that is not kept here, `internal` where the thread broke
 */
export async function readTestStoneAnswer(
  parts: ReadingParts,
  ids: readonly string[],
): Promise<Result<TestStoneAnswer>> {
  const stones = await readTestStoneFindings(parts, ids);
  if (!stones.ok) return stones;
  const module = threadModule(import.meta.url, 'testStoneAnswerThread');
  const input = { stones: stones.value, deviations: [] };
  const ended = await oneAtATime(() => runInThread<never, TestStoneAnswer>(module, input).end);
  if (ended.kind === 'answered') return ok(ended.answer);
  return fail(
    failure('internal', { why: ended.kind === 'crashed' ? ended.why : 'no answer was worked out' }),
  );
}
