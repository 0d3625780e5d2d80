import { workerData } from 'node:worker_threads';
import { readSide } from '../../imaging/tone/readSide.ts';
import type { SideInput } from '../../imaging/tone/sideInput.ts';
import { answer } from '../threads/answer.ts';

answer(readSide(workerData as SideInput));
