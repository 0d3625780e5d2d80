import { setTimeout } from 'node:timers/promises';
import { workerData } from 'node:worker_threads';
import { answer, note } from '../../src/application/threads/answer.ts';
import { failure } from '../../src/foundation/failure.ts';
import { fail } from '../../src/foundation/result.ts';

/** Stands in for the engine: a reading that is never done, until it is told to stop. */
const flag = new Int32Array((workerData as { readonly stopFlag: SharedArrayBuffer }).stopFlag);
note({ stage: 'reading', fraction: 0.1 });
while (Atomics.load(flag, 0) === 0) await setTimeout(5);
answer(fail(failure('stopped')));
