import { workerData } from 'node:worker_threads';
import { type WeekSheetInput, weekSheetPdf } from '../../paper/sheets/weekSheet.ts';
import { answer } from '../threads/answer.ts';

answer(await weekSheetPdf(workerData as WeekSheetInput));
