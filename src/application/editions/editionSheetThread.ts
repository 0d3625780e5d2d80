import { workerData } from 'node:worker_threads';
import { type EditionSheetInput, editionSheetPdf } from '../../paper/sheets/editionSheet.ts';
import { answer } from '../threads/answer.ts';

answer(await editionSheetPdf(workerData as EditionSheetInput));
