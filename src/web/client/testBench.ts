import type { KeptPlan } from '../../records/keptPlan.ts';
import type { TestCourse } from '../../records/testCourse.ts';
import type { TestStone } from '../../records/testStone.ts';
import { say } from '../words/say.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';

export const testCourseKey = (id: string) => [say('test stone'), id, 'steps'] as const;

/** Every step of a test stone for whoever etches. */
export function readTestCourse(id: string): Promise<TestCourse> {
  return ask(`/api/test-stones/${id}/steps`);
}

/** Makes a test stone ready for the bench, on a stone, for so many hands, with the tannic solution of a batch. */
export function putAtBench(
  { id, version }: Pick<TestStone, 'id' | 'version'>,
  stoneId: string,
  people: 1 | 2,
  tannicBatchId: string | null,
  freshGrain: boolean,
): Promise<{ readonly testStone: TestStone; readonly plan: KeptPlan }> {
  return ask(
    `/api/test-stones/${id}/bench`,
    withJson('POST', { version, stoneId, people, tannicBatchId, freshGrain }),
  );
}

/** Where the steps lie on paper, for one pair of hands. */
export const courseSheetAddress = (id: string, hands: TestCourse['for']) =>
  inPageWords(`/api/test-stones/${id}/steps.pdf?for=${hands}`);
