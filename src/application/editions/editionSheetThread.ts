import { editionSheetPdf } from '../../paper/sheets/editionSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(editionSheetPdf);
