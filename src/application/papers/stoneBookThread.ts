import { stoneBookPdf } from '../../paper/sheets/stoneBookSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(stoneBookPdf);
