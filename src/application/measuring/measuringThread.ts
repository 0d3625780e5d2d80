import { readFile } from 'node:fs/promises';
import { workerData } from 'node:worker_threads';
import type { MeasureSide, PhotographFile } from '../comparison/measureInput.ts';
import { measureComparison } from '../measureComparison.ts';
import { answer, note } from '../threads/answer.ts';
import type { JobPhotograph, JobSide, MeasuringJob } from './measuringJob.ts';

async function photographOf({ file, fileName }: JobPhotograph): Promise<PhotographFile> {
  return { bytes: await readFile(file), fileName };
}

async function sideOf(side: JobSide): Promise<MeasureSide> {
  return {
    ...(await photographOf(side)),
    corners: side.corners,
    repeat: side.repeat === null ? null : await photographOf(side.repeat),
    flat: side.flat === null ? null : await photographOf(side.flat),
  };
}

const job = workerData as MeasuringJob;
const cancelFlag = new Int32Array(job.cancelFlag);

answer(
  await measureComparison(
    {
      stone: await sideOf(job.stone),
      proof: await sideOf(job.proof),
      sizeMm: job.sizeMm,
      zones: job.zones,
      chips: job.chips,
      ...(job.cornersInOrder && { cornersInOrder: true }),
    },
    { progress: note, cancelled: () => Atomics.load(cancelFlag, 0) === 1 },
    new Date(),
  ),
);
