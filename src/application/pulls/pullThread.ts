import { workerData } from 'node:worker_threads';
import { answer, note } from '../threads/answer.ts';
import { measurePull } from './measurePull.ts';
import type { PullJob } from './pullJob.ts';

const { stopFlag, ...job } = workerData as PullJob & { readonly stopFlag: SharedArrayBuffer };
const flag = new Int32Array(stopFlag);

answer(await measurePull(job as PullJob, { progress: note, stopped: () => Atomics.load(flag, 0) === 1 }));
