import { protocolSheetPdf } from '../../paper/sheets/protocolSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

// No day of its own, so that everybody has the same bytes.
await answerSheet(() => protocolSheetPdf(new Date(0)));
