import { readFile } from 'node:fs/promises';
import { workerData } from 'node:worker_threads';
import type {
  MeasureInput,
  MeasureSide,
  MeasuringHooks,
  PhotographFile,
} from '../comparison/measureInput.ts';
import { keptPartsIn } from '../testStones/reading/keptParts.ts';
import { measurePatches } from '../testStones/reading/measurePatches.ts';
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
const stopFlag = new Int32Array(job.stopFlag);

const input: MeasureInput = {
  stone: await sideOf(job.stone),
  proof: await sideOf(job.proof),
  sizeMm: job.sizeMm,
  zones: job.zones,
  chips: job.chips,
  ...(job.cornersInOrder && { cornersInOrder: true }),
};
const hooks: MeasuringHooks = { progress: note, stopped: () => Atomics.load(stopFlag, 0) === 1 };

answer(
  job.patches
    ? await measurePatches(input, keptPartsIn(job.patches), hooks)
    : await (await import('../measureComparison.ts')).measureComparison(input, hooks, new Date()),
);
