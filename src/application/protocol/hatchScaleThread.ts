import { hatchScaleSheetPdf } from '../../paper/sheets/hatchScaleSheet.ts';
import { answerSheet } from '../threads/answerSheet.ts';

// No day of its own, so that everybody has the same bytes.
await answerSheet(() => hatchScaleSheetPdf(new Date(0)));
