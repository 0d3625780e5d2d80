import { type Failure, failure } from '../../foundation/failure.ts';
import type { Result } from '../../foundation/result.ts';
import type { ComparisonState, MeasuringProgress } from '../../records/comparisonEntry.ts';
import { type RunningMeasurement, startMeasurement } from './startMeasurement.ts';

/** How something ends that was not measured. */
export type UnmeasuredMove =
  | { readonly to: 'waiting' }
  | { readonly to: 'stopped'; readonly interruptions: 0 }
  | { readonly to: 'not-done'; readonly failure: Failure; readonly interruptions: 0 };

/** What a thread left, or how it ended without. */
export type Measured<Value> =
  | { readonly value: Value; readonly ended: null }
  | { readonly value: null; readonly ended: UnmeasuredMove };

/** Measures in a thread; tells its progress, and ends it where it is stopped or the program closes. */
export type MeasureInThread = <Value>(module: URL, job: object) => Promise<Measured<Value>>;

/** What a queue is of: `Waiting` as the database lists it, `Taken` once it is its turn. */
export interface WaitingQueueParts<Waiting, Taken, Move extends { readonly to: ComparisonState }> {
  /** For complaints. */
  readonly name: string;
  readonly keyOf: (waiting: Waiting) => string;
  /** The one that has waited longest; null where none waits. */
  readonly nextWaiting: () => Promise<Waiting | null>;
  /** Moves it from waiting to being measured; null where it waits no longer. */
  readonly take: (waiting: Waiting) => Promise<Taken | null>;
  readonly measure: (taken: Taken, inThread: MeasureInThread) => Promise<Move | UnmeasuredMove>;
  /** Moves it to where it ended; false where somebody took it out meanwhile. */
  readonly end: (taken: Taken, move: Move | UnmeasuredMove) => Promise<boolean>;
  readonly tell: (taken: Taken, state: ComparisonState, progress: MeasuringProgress | null) => void;
  /** Waits for the one place at which something is measured, whatever is. */
  readonly turn: <T>(measure: () => Promise<T>) => Promise<T>;
}

export interface WaitingQueue {
  /** Looks for what waits; to be called whenever something was put into the state `waiting`. */
  wake(): void;
  /** Stops measuring this, if it is what is being measured; its state changes once it has stopped. */
  stopMeasuring(key: string): void;
  /** How far what is being measured has come; null for anything else. */
  progressOf(key: string): MeasuringProgress | null;
  /** Ends the running measurement, which waits again and resumes at the next start. */
  stop(): Promise<void>;
}

interface Current {
  readonly key: string;
  measurement: RunningMeasurement<unknown> | null;
  progress: MeasuringProgress | null;
  stopped: boolean;
}

/** Screens need no more than this many ms between two steps of the same stage. */
const progressEveryMs = 100;

/** Measures what waits one at a time, oldest first. The database is the queue, so nothing asked for is lost. */
export function createWaitingQueue<Waiting, Taken, Move extends { readonly to: ComparisonState }>(
  parts: WaitingQueueParts<Waiting, Taken, Move>,
): WaitingQueue {
  let current: Current | null = null;
  let stopping = false;
  let work: Promise<void> = Promise.resolve();

  async function measureWaiting(): Promise<void> {
    while (!stopping) {
      const next = await parts.nextWaiting();
      if (next === null) return;
      await parts.turn(() => measure(next));
    }
  }

  async function measure(waiting: Waiting): Promise<void> {
    if (stopping) return;
    const taken = await parts.take(waiting);
    if (taken === null) return;
    const job: Current = { key: parts.keyOf(waiting), measurement: null, progress: null, stopped: false };
    current = job;
    parts.tell(taken, 'measuring', null);
    const move = await parts
      .measure(
        taken,
        inThread(job, (progress) => parts.tell(taken, 'measuring', progress)),
      )
      .catch((error: unknown) => failedWith(error));
    current = null;
    if (await parts.end(taken, move)) parts.tell(taken, move.to, null);
  }

  function inThread(job: Current, tell: (progress: MeasuringProgress) => void): MeasureInThread {
    return async <Value>(module: URL, data: object): Promise<Measured<Value>> => {
      const measurement = startMeasurement<Value>(module, data, noteProgress(job, tell));
      job.measurement = measurement;
      if (job.stopped || stopping) measurement.stop();
      const outcome = await measurement.outcome;
      if (stopping && !outcome.ok) return { value: null, ended: { to: 'waiting' } };
      return job.stopped ? { value: null, ended: stopped } : measuredOf(outcome);
    };
  }

  return {
    wake() {
      // a failing database must not end the queue: the next wake tries again
      work = work.then(measureWaiting).catch((error: unknown) => console.error(`${parts.name}:`, error));
    },
    stopMeasuring(key) {
      if (current?.key !== key) return;
      current.stopped = true;
      current.measurement?.stop();
    },
    progressOf: (key) => (current?.key === key ? current.progress : null),
    async stop() {
      stopping = true;
      current?.measurement?.stop();
      await work;
    },
  };
}

const stopped = { to: 'stopped', interruptions: 0 } as const;

function measuredOf<Value>(outcome: Result<Value>): Measured<Value> {
  if (outcome.ok) return { value: outcome.value, ended: null };
  if (outcome.error.code === 'stopped') return { value: null, ended: stopped };
  return { value: null, ended: { to: 'not-done', failure: outcome.error, interruptions: 0 } };
}

function failedWith(error: unknown): UnmeasuredMove {
  const why = error instanceof Error ? error.message : String(error);
  return { to: 'not-done', failure: failure('internal', { why }), interruptions: 0 };
}

function noteProgress(job: Current, tell: (progress: MeasuringProgress) => void) {
  let told = { stage: '', at: 0 };
  return (progress: MeasuringProgress) => {
    job.progress = progress;
    const now = performance.now();
    if (progress.stage === told.stage && now - told.at < progressEveryMs) return;
    told = { stage: progress.stage, at: now };
    tell(progress);
  };
}
