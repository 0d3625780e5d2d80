import { hatchScaleSheetPdf } from '../../paper/sheets/hatchScaleSheet.ts';
import { answer } from '../threads/answer.ts';

// No day of its own, so that everybody has the same bytes.
answer(await hatchScaleSheetPdf(new Date(0)));
