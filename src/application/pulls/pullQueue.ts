import { failure } from '../../foundation/failure.ts';
import { ok, type Result } from '../../foundation/result.ts';
import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { Store } from '../../store/openStore.ts';
import type { MeasuringMove, StoredMeasuring } from '../../store/repositories/pullMeasuringRepository.ts';
import { type RunningMeasurement, startMeasurement } from '../measuring/startMeasurement.ts';
import { fixSeries } from './fixSeries.ts';
import type { MeasuredPull } from './measurePull.ts';
import type { PullEvents } from './pullEvents.ts';
import { type KeyedJob, printJob } from './pullJob.ts';
import { settingsOf } from './seriesSettings.ts';

export interface PullQueueParts {
  readonly store: Store;
  readonly events: PullEvents;
  /** The thread's module: takes a `PullJob`, answers a `MeasuredPull`. */
  readonly module: URL;
  readonly now: () => Date;
  /** Waits for the one place at which something is measured, whatever is. */
  readonly turn: <T>(measure: () => Promise<T>) => Promise<T>;
}

export interface PullQueue {
  /** Looks for waiting photographs; to be called whenever one was put into the state `waiting`. */
  wake(): void;
  cancel(pullId: string, photograph: string): void;
  progressOf(pullId: string, photograph: string): MeasuringProgress | null;
  /** Reads a stone at once, in its turn; what was read before is not read again. */
  read(job: KeyedJob): Promise<Result<PullTones>>;
  /** Ends the running measurement, which waits again and resumes at the next start. */
  stop(): Promise<void>;
}

interface Current {
  readonly pullId: string;
  readonly photograph: string;
  measurement: RunningMeasurement<MeasuredPull> | null;
  progress: MeasuringProgress | null;
  cancelled: boolean;
}

/** Screens need no more than this many ms between two steps of the same stage. */
const progressEveryMs = 100;

/** Measures waiting photographs of pulls, oldest first, in turn with the comparisons. The database is the queue. */
export function createPullQueue(parts: PullQueueParts): PullQueue {
  const { store, events } = parts;
  let current: Current | null = null;
  let stopping = false;
  let work: Promise<void> = Promise.resolve();

  async function measureWaiting(): Promise<void> {
    while (!stopping) {
      const next = await store.pullMeasurings.nextWaiting();
      if (next === null) return;
      await parts.turn(() => measure(next));
    }
  }

  async function measure({ pullId, photograph }: StoredMeasuring): Promise<void> {
    if (stopping) return;
    const pull = (await store.pulls.find(pullId))!;
    const moved = await store.pullMeasurings.move(pullId, photograph, ['waiting'], { to: 'measuring' });
    if (!moved) return;
    const job: Current = { pullId, photograph, measurement: null, progress: null, cancelled: false };
    current = job;
    const tell = (state: MeasuringMove['to'], progress: MeasuringProgress | null) =>
      events.announce({ workId: pull.workId, pullId, photograph, state, progress });
    tell('measuring', null);
    const change = await endOf(pull, job, tell).catch((error: unknown) => failedWith(error));
    current = null;
    if (await store.pullMeasurings.move(pullId, photograph, ['measuring'], change)) tell(change.to, null);
  }

  async function endOf(
    pull: Pull,
    job: Current,
    tell: (state: 'measuring', progress: MeasuringProgress) => void,
  ): Promise<MeasuringMove> {
    const shown = pull.photographs.find(({ photograph }) => photograph === job.photograph);
    if (!shown) return { to: 'cancelled' };
    const owner = (await store.works.find(pull.workId))!;
    const keyed = await printJob({ store }, owner, await settingsOf(store, owner), shown);
    if (!keyed.ok) return { to: 'failed', failure: keyed.error, interruptions: 0 };
    const { key } = keyed.value;
    const known = await store.pullFiles.record(key);
    if (known === null) {
      job.measurement = startMeasurement(parts.module, keyed.value.job, noteProgress(job, tell));
      if (job.cancelled || stopping) job.measurement.cancel();
      const outcome = await job.measurement.outcome;
      if (stopping && !outcome.ok) return { to: 'waiting' };
      if (job.cancelled || (!outcome.ok && outcome.error.code === 'cancelled')) return { to: 'cancelled' };
      if (!outcome.ok) return { to: 'failed', failure: outcome.error, interruptions: 0 };
      await store.pullFiles.keep(key, outcome.value.record, outcome.value.files);
    }
    const tones = known ?? (await store.pullFiles.record(key))!;
    if (tones.verdict === 'ok') await fixSeries(parts, owner, pull, tones);
    const to = tones.verdict === 'ok' ? 'measured' : 'refused';
    return { to, resultKey: key, failure: null, interruptions: 0 };
  }

  function noteProgress(job: Current, tell: (state: 'measuring', progress: MeasuringProgress) => void) {
    let told = { stage: '', at: 0 };
    return (progress: MeasuringProgress) => {
      job.progress = progress;
      const now = performance.now();
      if (progress.stage === told.stage && now - told.at < progressEveryMs) return;
      told = { stage: progress.stage, at: now };
      tell('measuring', progress);
    };
  }

  const isCurrent = (pullId: string, photograph: string) =>
    current?.pullId === pullId && current.photograph === photograph;

  return {
    wake() {
      // a failing database must not end the queue: the next wake tries again
      work = work.then(measureWaiting).catch((error: unknown) => console.error('pull queue:', error));
    },
    cancel(pullId, photograph) {
      if (!isCurrent(pullId, photograph)) return;
      current!.cancelled = true;
      current!.measurement?.cancel();
    },
    progressOf: (pullId, photograph) => (isCurrent(pullId, photograph) ? current!.progress : null),
    read: ({ key, job }) =>
      parts.turn(async () => {
        const known = await store.pullFiles.record(key);
        if (known !== null) return ok(known);
        const outcome = await startMeasurement<MeasuredPull>(parts.module, job, () => {}).outcome;
        if (!outcome.ok) return outcome;
        await store.pullFiles.keep(key, outcome.value.record, outcome.value.files);
        return ok(outcome.value.record);
      }),
    async stop() {
      stopping = true;
      current?.measurement?.cancel();
      await work;
    },
  };
}

function failedWith(error: unknown): MeasuringMove {
  const why = error instanceof Error ? error.message : String(error);
  return { to: 'failed', failure: failure('internal', { why }), interruptions: 0 };
}
