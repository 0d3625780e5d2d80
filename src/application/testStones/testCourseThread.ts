import { testCoursePdf } from '../../paper/sheets/testCourseSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(testCoursePdf);
