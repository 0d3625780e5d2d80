import { weekSheetPdf } from '../../paper/sheets/weekSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(weekSheetPdf);
