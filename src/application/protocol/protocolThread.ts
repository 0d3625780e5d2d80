import { protocolSheetPdf } from '../../paper/sheets/protocolSheet.ts';
import { answer } from '../threads/answer.ts';

answer(await protocolSheetPdf());
