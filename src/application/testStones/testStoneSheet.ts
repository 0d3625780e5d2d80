import type { Result } from '../../foundation/result.ts';
import type { TestStoneSheetInput } from '../../paper/sheets/testStoneSheet.ts';
import { dateWords } from '../dateWords.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';
import { type AnswerParts, readTestStoneAnswer } from './readTestStoneAnswer.ts';
import { readTestStoneFindings } from './readTestStoneFindings.ts';

export type TestStoneSheetParts = AnswerParts & { readonly now: () => Date };

/** What test stones answer, as a PDF; `not-found` for a stone that is not kept here. */
export async function testStoneSheet(
  parts: TestStoneSheetParts,
  ids: readonly string[],
): Promise<Result<Uint8Array>> {
  const stones = await readTestStoneFindings(parts, ids);
  if (!stones.ok) return stones;
  const answer = await readTestStoneAnswer(parts, ids);
  if (!answer.ok) return answer;
  const createdAt = parts.now();
  const names = stones.value.map(({ stone }) => stone).join(', ');
  const title = stones.value.length === 1 ? `Test stone ${names}` : `Test stones ${names}`;
  const input: TestStoneSheetInput = {
    title,
    answer: answer.value,
    stones: stones.value,
    dateText: dateWords(createdAt),
    createdAt,
  };
  return setSheet(threadModule(import.meta.url, 'testStoneThread'), input);
}
