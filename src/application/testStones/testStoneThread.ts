import { workerData } from 'node:worker_threads';
import { type TestStoneSheetInput, testStonePdf } from '../../paper/sheets/testStoneSheet.ts';
import { answer } from '../threads/answer.ts';

answer(await testStonePdf(workerData as TestStoneSheetInput));
