import { workerData } from 'node:worker_threads';
import { answer } from '../threads/answer.ts';
import { type CopyOrder, makeCopy } from './makeCopy.ts';

answer(await makeCopy(workerData as CopyOrder));
