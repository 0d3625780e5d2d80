import { workProtocolPdf } from '../../paper/sheets/workProtocolSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(workProtocolPdf);
