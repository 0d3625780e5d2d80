import { workerData } from 'node:worker_threads';
import { answer } from '../../threads/answer.ts';
import { type PatchSideInput, readPatchSide } from './readPatchSide.ts';

answer(await readPatchSide(workerData as PatchSideInput));
