import { failure } from '../../foundation/failure.ts';
import { fail, type Result } from '../../foundation/result.ts';
import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import { runInProcess } from '../threads/runInProcess.ts';
import type { ThreadEnd } from '../threads/runInThread.ts';

export interface RunningMeasurement<Value> {
  /** Never rejects: a crash is a `measuring-crashed`, one that was stopped a `stopped`. */
  readonly outcome: Promise<Result<Value>>;
  /** Asks the thread to stop, and ends it where it stands if it has not stopped after the grace. */
  stop(): void;
}

/** How long a thread may take to stop by itself. OpenCV calls cannot be interrupted, and take a second or so. */
const graceMs = 2000;

function answerOf<Value>(end: ThreadEnd<Result<Value>>): Result<Value> {
  switch (end.kind) {
    case 'answered':
      return end.answer;
    case 'terminated':
      return fail(failure('stopped'));
    case 'crashed':
      return fail(failure('measuring-crashed', { why: end.why }));
    default:
      return end satisfies never;
  }
}

/**
 * Measures in a process of its own.
 *
 * @param module the thread's module: takes the job with a `stopFlag` (one 32-bit number seen by both threads: 0 go on, 1
 * stop), notes its progress, answers a result
 */
export function startMeasurement<Value>(
  module: URL,
  job: object,
  onProgress: (progress: MeasuringProgress) => void,
): RunningMeasurement<Value> {
  const thread = runInProcess<MeasuringProgress, Result<Value>>(module, job, onProgress);
  let grace: NodeJS.Timeout | undefined;
  const outcome = thread.end.then((end) => {
    clearTimeout(grace);
    // the answer is whole: what is left of the thread only holds memory
    void thread.terminate();
    return answerOf(end);
  });
  return {
    outcome,
    stop() {
      thread.askToStop();
      grace ??= setTimeout(() => void thread.terminate(), graceMs);
    },
  };
}
