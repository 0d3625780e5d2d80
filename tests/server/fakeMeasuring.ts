import { readFile } from 'node:fs/promises';
import { setTimeout } from 'node:timers/promises';
import { workerData } from 'node:worker_threads';
import type { MeasuringJob } from '../../src/application/measuring/measuringJob.ts';
import { answer, note } from '../../src/application/threads/answer.ts';
import { failure } from '../../src/foundation/failure.ts';
import { fail, ok } from '../../src/foundation/result.ts';
import { aRecord, heldZone } from './aRecord.ts';

/** Stands in for the engine: what it does is said by the stone's file name. */
const job = workerData as MeasuringJob;
const flag = new Int32Array(job.stopFlag);
const behaviour = job.stone.fileName.split('.')[0]!;

note({ stage: 'reading', fraction: 0.1 });
switch (behaviour) {
  case 'slow':
    while (Atomics.load(flag, 0) === 0) await setTimeout(5);
    answer(fail(failure('stopped')));
    break;
  case 'deaf':
    for (;;);
  case 'crash':
    throw new Error('the heap is full');
  case 'fails':
    answer(fail(failure('corners-not-found', { photo: 'stone', why: 'it is a cat' })));
    break;
  default: {
    await setTimeout(20);
    note({ stage: 'sheets', fraction: 0.9 });
    const verdict = behaviour === 'turned' ? 'unmirrored' : 'ok';
    answer(
      ok({
        record: {
          ...aRecord(verdict, job.sizeMm),
          zones: behaviour === 'held' ? job.zones.map(heldZone) : [],
        },
        files: new Map([
          ['stone.png', await readFile(job.stone.file)],
          ['ladder.svg', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')],
          ['comparison.json', Buffer.from('{}')],
        ]),
      }),
    );
  }
}
