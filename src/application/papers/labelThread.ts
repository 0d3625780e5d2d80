import { labelSheetPdf } from '../../paper/sheets/labelSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(labelSheetPdf);
