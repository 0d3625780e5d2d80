import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestStoneAnswer, TestStoneFindings } from '../../records/testStoneAnswer.ts';
import { answerTestStone } from '../../studio/trials/answer/answerTestStone.ts';
import { type ReadingParts, readTestStoneReading } from './readTestStoneReading.ts';
import { noSuchTestStone } from './testStones.ts';

/**
 * What test stones answer together, each by the print that it is judged by; stones that aren't read count for nothing.
 * @returns `not-found` for a stone that is not kept here
 */
export async function readTestStoneAnswer(
  parts: ReadingParts,
  ids: readonly string[],
): Promise<Result<TestStoneAnswer>> {
  const stones: TestStoneFindings[] = [];
  for (const id of new Set(ids)) {
    const stone = await parts.store.testStones.find(id);
    if (stone === null) return fail(noSuchTestStone());
    const reading = await readTestStoneReading(parts, id);
    if (!reading.ok) return reading;
    const { findings, prints } = reading.value;
    stones.push({
      stone: stone.name,
      sizeMm: stone.sizeMm,
      factors: stone.factors,
      findings,
      prints: prints.filter(({ patches }) => patches.length > 0).length,
    });
  }
  return ok(answerTestStone(stones, []));
}
