import { roomCardPdf } from '../../paper/sheets/roomCards.ts';
import { answerSheet } from '../threads/answerSheet.ts';

await answerSheet(roomCardPdf);
