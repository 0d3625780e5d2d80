import { failure } from '../../foundation/failure.ts';
import { fail } from '../../foundation/result.ts';
import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import { runInThread, type ThreadEnd } from '../threads/runInThread.ts';
import type { MeasuringAnswer, MeasuringJob } from './measuringJob.ts';

export interface RunningMeasurement {
  /** Never rejects: a crash is a `measuring-crashed`, a cancel a `cancelled`. */
  readonly outcome: Promise<MeasuringAnswer>;
  /** Asks the thread to stop, and ends it where it stands if it has not stopped after the grace. */
  cancel(): void;
}

/** How long a thread may take to stop by itself. OpenCV calls cannot be interrupted, and take a second or so. */
const graceMs = 2000;

function answerOf(end: ThreadEnd<MeasuringAnswer>): MeasuringAnswer {
  switch (end.kind) {
    case 'answered':
      return end.answer;
    case 'terminated':
      return fail(failure('cancelled'));
    case 'crashed':
      return fail(failure('measuring-crashed', { why: end.why }));
    default:
      return end satisfies never;
  }
}

/**
 * Measures in a thread of its own.
 *
 * @param module the thread's module: takes a `MeasuringJob`, notes its progress, answers a `MeasuringAnswer`
 */
export function startMeasurement(
  module: URL,
  job: Omit<MeasuringJob, 'cancelFlag'>,
  onProgress: (progress: MeasuringProgress) => void,
): RunningMeasurement {
  const cancelFlag = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const data: MeasuringJob = { ...job, cancelFlag };
  const thread = runInThread<MeasuringProgress, MeasuringAnswer>(module, data, onProgress);
  let grace: NodeJS.Timeout | undefined;
  const outcome = thread.end.then((end) => {
    clearTimeout(grace);
    // the answer is whole: what is left of the thread only holds memory
    void thread.terminate();
    return answerOf(end);
  });
  return {
    outcome,
    cancel() {
      Atomics.store(new Int32Array(cancelFlag), 0, 1);
      grace ??= setTimeout(() => void thread.terminate(), graceMs);
    },
  };
}
