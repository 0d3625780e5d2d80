import { failure } from '../../foundation/failure.ts';
import type { ComparisonRecord } from '../../records/comparison.ts';
import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Store } from '../../store/openStore.ts';
import type { ComparisonMove, StoredComparison } from '../../store/repositories/storedComparison.ts';
import type { ComparisonEvents } from './comparisonEvents.ts';
import { jobOf } from './jobOf.ts';
import type { MeasuringAnswer, MeasuringOutcome } from './measuringJob.ts';
import { resultKey } from './resultKey.ts';
import { type RunningMeasurement, startMeasurement } from './startMeasurement.ts';

export interface MeasuringQueueParts {
  readonly store: Pick<Store, 'comparisons' | 'photographs' | 'photographFiles' | 'resultFiles'>;
  readonly events: ComparisonEvents;
  /** The measuring thread's module. */
  readonly module: URL;
  readonly engineVersion: string;
  /** The finding of a record in one sentence. */
  readonly findingOf: (record: ComparisonRecord) => string;
  /** Waits for the one place at which something is measured, whatever is. */
  readonly turn: <T>(measure: () => Promise<T>) => Promise<T>;
}

export interface MeasuringQueue {
  /** Looks for waiting comparisons; to be called whenever one was put into the state `waiting`. */
  wake(): void;
  /** Stops measuring this comparison, if it is the one being measured; its state changes once it has stopped. */
  cancel(id: string): void;
  /** How far the comparison being measured has come; null for any other. */
  progressOf(id: string): MeasuringProgress | null;
  /** Ends the running measurement, which waits again and resumes at the next start. */
  stop(): Promise<void>;
}

interface Current {
  readonly id: string;
  measurement: RunningMeasurement<MeasuringOutcome> | null;
  progress: MeasuringProgress | null;
  cancelled: boolean;
}

/** Screens need no more than this many ms between two steps of the same stage. */
const progressEveryMs = 100;

/** Measures waiting comparisons one at a time, oldest first. The database is the queue, so nothing asked for is lost. */
export function createMeasuringQueue(parts: MeasuringQueueParts): MeasuringQueue {
  const { store, events } = parts;
  let current: Current | null = null;
  let stopping = false;
  let work: Promise<void> = Promise.resolve();

  async function measureWaiting(): Promise<void> {
    while (!stopping) {
      const next = await store.comparisons.nextWaiting();
      if (next === null) return;
      await parts.turn(() => measure(next));
    }
  }

  async function measure(comparison: StoredComparison): Promise<void> {
    const { id } = comparison;
    if (!(await store.comparisons.move(id, ['waiting'], { to: 'measuring' }))) return;
    const job: Current = { id, measurement: null, progress: null, cancelled: false };
    current = job;
    events.announce({ id, state: 'measuring', progress: null });
    const change = await endOf(comparison, job).catch((error: unknown) => failedWith(error));
    current = null;
    if (await store.comparisons.move(id, ['measuring'], change)) {
      events.announce({ id, state: change.to, progress: null });
    }
  }

  async function endOf(comparison: StoredComparison, job: Current): Promise<ComparisonMove> {
    const key = resultKey(comparison.request, parts.engineVersion);
    const known = await store.resultFiles.record(key);
    if (known !== null) return measuredAs(known, key);
    const input = await jobOf(store, comparison.request);
    job.measurement = startMeasurement(parts.module, input, noteProgress(job));
    if (job.cancelled || stopping) job.measurement.cancel();
    const answer = await job.measurement.outcome;
    if (stopping && !answer.ok) return { to: 'waiting' };
    if (job.cancelled) return { to: 'cancelled', interruptions: 0 };
    return keepAnswer(answer, key);
  }

  async function keepAnswer(answer: MeasuringAnswer, key: string): Promise<ComparisonMove> {
    if (!answer.ok) {
      const cancelled = answer.error.code === 'cancelled';
      return cancelled
        ? { to: 'cancelled', interruptions: 0 }
        : { to: 'failed', failure: answer.error, interruptions: 0 };
    }
    const { record, files } = answer.value;
    await store.resultFiles.keep(key, record, files);
    return measuredAs(record, key);
  }

  function measuredAs(record: ComparisonRecord, key: string): ComparisonMove {
    const to = record.verdict === 'ok' ? 'measured' : 'refused';
    return { to, finding: parts.findingOf(record), resultKey: key, failure: null, interruptions: 0 };
  }

  function noteProgress(job: Current): (progress: MeasuringProgress) => void {
    let told = { stage: '', at: 0 };
    return (progress) => {
      job.progress = progress;
      const now = performance.now();
      if (progress.stage === told.stage && now - told.at < progressEveryMs) return;
      told = { stage: progress.stage, at: now };
      events.announce({ id: job.id, state: 'measuring', progress });
    };
  }

  return {
    wake() {
      // a failing database must not end the queue: the next wake tries again
      work = work.then(measureWaiting).catch((error: unknown) => console.error('measuring queue:', error));
    },
    cancel(id) {
      if (current?.id !== id) return;
      current.cancelled = true;
      current.measurement?.cancel();
    },
    progressOf: (id) => (current?.id === id ? current.progress : null),
    async stop() {
      stopping = true;
      current?.measurement?.cancel();
      await work;
    },
  };
}

function failedWith(error: unknown): ComparisonMove {
  const why = error instanceof Error ? error.message : String(error);
  return { to: 'failed', failure: failure('internal', { why }), interruptions: 0 };
}
