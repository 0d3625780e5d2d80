import { protocolSheetPdf } from '../../paper/sheets/protocolSheet.ts';
import { answer } from '../threads/answer.ts';

// No day of its own, so that everybody has the same bytes.
answer(await protocolSheetPdf(new Date(0)));
