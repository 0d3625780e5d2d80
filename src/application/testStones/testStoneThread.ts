import { testStonePdf } from '../../paper/sheets/testStoneSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(testStonePdf);
