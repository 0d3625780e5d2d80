import { workerData } from 'node:worker_threads';
import { type TestCourseSheetInput, testCoursePdf } from '../../paper/sheets/testCourseSheet.ts';
import { answer } from '../threads/answer.ts';

answer(await testCoursePdf(workerData as TestCourseSheetInput));
