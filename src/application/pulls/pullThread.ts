import { workerData } from 'node:worker_threads';
import { answer, note } from '../threads/answer.ts';
import { measurePull } from './measurePull.ts';
import type { PullJob } from './pullJob.ts';

const { cancelFlag, ...job } = workerData as PullJob & { readonly cancelFlag: SharedArrayBuffer };
const flag = new Int32Array(cancelFlag);

answer(await measurePull(job as PullJob, { progress: note, cancelled: () => Atomics.load(flag, 0) === 1 }));
