import { workerData } from 'node:worker_threads';
import { answer } from '../threads/answer.ts';
import { type CheckOrder, checkCopy } from './checkCopy.ts';

answer(await checkCopy(workerData as CheckOrder));
