import { ok, type Result } from '../../foundation/result.ts';
import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { Store } from '../../store/openStore.ts';
import type { MeasuringMove, StoredMeasuring } from '../../store/repositories/pullMeasuringRepository.ts';
import { startMeasurement } from '../measuring/startMeasurement.ts';
import { createWaitingQueue, type MeasureInThread, type UnmeasuredMove } from '../measuring/waitingQueue.ts';
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
  stopMeasuring(pullId: string, photograph: string): void;
  progressOf(pullId: string, photograph: string): MeasuringProgress | null;
  /** Reads a stone at once, in its turn; what was read before is not read again. */
  read(job: KeyedJob): Promise<Result<PullTones>>;
  /** Ends the running measurement, which waits again and resumes at the next start. */
  stop(): Promise<void>;
}

/** A photograph whose turn it is. */
interface TakenPhotograph {
  readonly pull: Pull;
  readonly photograph: string;
}

/** Measures waiting photographs of pulls, in turn with the comparisons. */
export function createPullQueue(parts: PullQueueParts): PullQueue {
  const { store, events } = parts;

  async function take({ pullId, photograph }: StoredMeasuring): Promise<TakenPhotograph | null> {
    const pull = (await store.pulls.find(pullId))!;
    const moved = await store.pullMeasurings.move(pullId, photograph, ['waiting'], { to: 'measuring' });
    return moved ? { pull, photograph } : null;
  }

  async function measure(
    { pull, photograph }: TakenPhotograph,
    inThread: MeasureInThread,
  ): Promise<MeasuringMove | UnmeasuredMove> {
    const shown = pull.photographs.find((one) => one.photograph === photograph);
    if (!shown) return { to: 'stopped' };
    const owner = (await store.works.find(pull.workId))!;
    const keyed = await printJob({ store }, owner, await settingsOf(store, owner), shown);
    if (!keyed.ok) return { to: 'not-done', failure: keyed.error, interruptions: 0 };
    const { key } = keyed.value;
    const known = await store.pullFiles.record(key);
    if (known === null) {
      const { value, ended } = await inThread<MeasuredPull>(parts.module, keyed.value.job);
      if (ended) return ended;
      await store.pullFiles.keep(key, value.record, value.files);
    }
    const tones = known ?? (await store.pullFiles.record(key))!;
    if (tones.verdict === 'ok') await fixSeries(parts, owner, pull, tones);
    const to = tones.verdict === 'ok' ? 'measured' : 'refused';
    return { to, resultKey: key, failure: null, interruptions: 0 };
  }

  const keyOf = (pullId: string, photograph: string) => `${pullId} ${photograph}`;
  const queue = createWaitingQueue<StoredMeasuring, TakenPhotograph, MeasuringMove>({
    name: 'pull queue',
    keyOf: ({ pullId, photograph }) => keyOf(pullId, photograph),
    nextWaiting: () => store.pullMeasurings.nextWaiting(),
    take,
    measure,
    end: ({ pull, photograph }, move) => store.pullMeasurings.move(pull.id, photograph, ['measuring'], move),
    tell: ({ pull, photograph }, state, progress) =>
      events.announce({ workId: pull.workId, pullId: pull.id, photograph, state, progress }),
    turn: parts.turn,
  });

  return {
    wake: queue.wake,
    stopMeasuring: (pullId, photograph) => queue.stopMeasuring(keyOf(pullId, photograph)),
    progressOf: (pullId, photograph) => queue.progressOf(keyOf(pullId, photograph)),
    read: ({ key, job }) =>
      parts.turn(async () => {
        const known = await store.pullFiles.record(key);
        if (known !== null) return ok(known);
        const outcome = await startMeasurement<MeasuredPull>(parts.module, job, () => {}).outcome;
        if (!outcome.ok) return outcome;
        await store.pullFiles.keep(key, outcome.value.record, outcome.value.files);
        return ok(outcome.value.record);
      }),
    stop: queue.stop,
  };
}
