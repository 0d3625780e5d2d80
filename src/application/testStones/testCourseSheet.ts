import type { Result } from '../../foundation/result.ts';
import type { TestCourseSheetInput } from '../../paper/sheets/testCourseSheet.ts';
import type { TestCourse } from '../../records/testCourse.ts';
import type { Store } from '../../store/openStore.ts';
import { dateWords } from '../dateWords.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';
import { readTestCourse } from './readTestCourse.ts';

/** Every step of a test stone for one pair of hands, as a PDF; or `not-found`. */
export async function testCourseSheet(
  parts: { readonly store: Pick<Store, 'testStones' | 'plans'>; readonly now: () => Date },
  id: string,
  hands: TestCourse['for'],
): Promise<Result<Uint8Array>> {
  const course = await readTestCourse(parts, id, hands);
  if (!course.ok) return course;
  const createdAt = parts.now();
  const input: TestCourseSheetInput = { course: course.value, dateText: dateWords(createdAt), createdAt };
  return setSheet(threadModule(import.meta.url, 'testCourseThread'), input);
}
