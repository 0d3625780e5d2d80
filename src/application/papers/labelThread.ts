import { workerData } from 'node:worker_threads';
import { type LabelSheetInput, labelSheetPdf } from '../../paper/sheets/labelSheet.ts';
import { answer } from '../threads/answer.ts';

answer(await labelSheetPdf(workerData as LabelSheetInput));
