import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestStoneFindings } from '../../records/testStoneAnswer.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';
import { type ReadingParts, readTestStoneReading } from './readTestStoneReading.ts';

/** What was found on test stones, each by the print that it is judged by; `not-found` for one that is not kept here. */
export async function readTestStoneFindings(
  parts: ReadingParts,
  ids: readonly string[],
): Promise<Result<readonly TestStoneFindings[]>> {
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
  return ok(stones);
}
