import type { KeptPlan, KeptSecondEtch } from '../../records/keptPlan.ts';
import type { RunEvent, RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { foldRun, type RunFold } from '../../studio/bench/foldRun.ts';
import { routeOf } from '../../studio/bench/runState.ts';
import type { EtchRoute } from '../../studio/bench/waitRanges.ts';
import { createFoldShelf } from './foldShelf.ts';
import type { RunAnnouncement } from './logging.ts';
import { createNewest } from './newest.ts';

/** So many logs are held in memory: those of the stones that are worked on. */
const logsHeld = 8;
/** Outcomes of logs that tell of so many events in all are held: those of a full rack, and of some years' runs. */
const eventsOfFolds = 500_000;
/** What an outcome weighs at least, in events, however short its log. */
const lightestFold = 20;
/** Few enough that reading one page holds nobody up. */
const eventsEach = 2000;

/** A log of so many events is worth keeping its outcome on the disk: a rack shows hundreds of them at once. */
const longLog = 10;
/** Nothing was logged for so long, ms: time to keep what the log amounts to. */
const quietMs = 10_000;

/** What logs amount to, held in memory until their next event, and of long ones on the disk. */
export interface RunFolds {
  /** The outcome of a run's log as far as it was kept when the run was read. */
  of(run: RunSummary, plan: KeptPlan | null): Promise<RunFold>;
  /** The same with the route of the run's plan, which is read only where the outcome is not held. */
  told(run: RunSummary): Promise<ToldRun>;
  /** A log grew: its outcome is kept on the disk once it is quiet. */
  heard(told: Pick<RunAnnouncement, 'runId' | 'event'>): void;
  /** Keeps at once what waits to be kept. */
  settle(): Promise<void>;
}

interface ToldRun {
  readonly fold: RunFold;
  readonly route: EtchRoute;
}

export interface RunFoldParts {
  readonly store: Pick<KeptRecords, 'runs' | 'plans' | 'folds'>;
  /** By which rules logs are read now. */
  readonly version: string;
  /** Logs of so many events are kept on the disk. */
  readonly longFrom?: number;
  /** Outcomes of logs of so many events in all are held in memory. */
  readonly eventsHeld?: number;
}

interface Held {
  readonly events: number;
  readonly planId: string | null;
  readonly fold: Promise<RunFold>;
  readonly route: EtchRoute;
}

export function createRunFolds({
  store,
  version,
  longFrom = longLog,
  eventsHeld = eventsOfFolds,
}: RunFoldParts): RunFolds {
  const shelf = createFoldShelf(store, version);
  const waiting = new Map<string, NodeJS.Timeout>();
  let keeping: Promise<unknown> = Promise.resolve();
  const folds = createNewest<Held>(eventsHeld, ({ events }) => Math.max(events, lightestFold));
  const logs = createNewest<Promise<RunEvent[]>>(logsHeld, () => 1);

  function logOf(runId: string): Promise<RunEvent[]> {
    const before = logs.get(runId) ?? Promise.resolve([]);
    const reading = before.then((events) => readOn(store, runId, events));
    logs.set(runId, reading);
    return reading;
  }

  /**
   * One after the other, so that a tap never waits behind many. Where keeping fails, the outcome is worked out again the
   * next time: the log holds everything.
   */
  function keep(runId: string): Promise<unknown> {
    clearTimeout(waiting.get(runId));
    waiting.delete(runId);
    keeping = keeping.then(() => keepNow(runId)).catch(() => {});
    return keeping;
  }

  async function keepNow(runId: string): Promise<void> {
    const run = await store.runs.find(runId);
    if (run === null) return;
    const plan = run.planId === null ? null : await store.plans.findFirst(run.workId, run.planId);
    await shelf.keep(run, await of(run, plan));
  }

  function keepWhenQuiet(runId: string): void {
    clearTimeout(waiting.get(runId));
    const timer = setTimeout(() => void keep(runId), quietMs);
    waiting.set(runId, timer.unref());
  }

  async function fold(run: RunSummary, plan: KeptPlan | null): Promise<RunFold> {
    const long = run.events >= longFrom;
    const kept = long && !logs.has(run.id) ? await shelf.read(run) : null;
    if (kept !== null) return kept;
    if (long) keepWhenQuiet(run.id);
    return workedOut(run, plan);
  }

  async function workedOut(run: RunSummary, plan: KeptPlan | null): Promise<RunFold> {
    const events = await logOf(run.id);
    const seconds = await secondEtchesOf(store, run, events);
    const outcome = foldRun(events, { first: plan?.plan ?? null, seconds });
    const undone = await undoneNotes(store, run.id, events);
    const facts = outcome.facts.filter(
      ({ fact, sequence }) => fact !== 'undo-of-nothing' || !undone.has(sequence),
    );
    return { ...outcome, facts };
  }

  function of(run: RunSummary, plan: KeptPlan | null): Promise<RunFold> {
    const held = folds.get(run.id);
    if (stillHolds(held, run)) return held.fold;
    const fresh = { events: run.events, planId: run.planId, fold: fold(run, plan), route: routeOf(plan) };
    folds.set(run.id, fresh);
    fresh.fold.catch(() => {
      folds.delete(run.id);
      logs.delete(run.id);
    });
    return fresh.fold;
  }

  async function told(run: RunSummary): Promise<ToldRun> {
    const held = folds.get(run.id);
    if (stillHolds(held, run)) return { fold: await held.fold, route: held.route };
    const plan = run.planId === null ? null : await store.plans.findFirst(run.workId, run.planId);
    return { fold: await of(run, plan), route: routeOf(plan) };
  }

  return {
    of,
    told,
    heard({ runId, event }) {
      if (event.sequence >= longFrom) keepWhenQuiet(runId);
    },
    async settle() {
      await Promise.all([...waiting.keys()].map(keep));
      await keeping;
    },
  };
}

/** Until its next event, or until a run that had no plan was given one. */
function stillHolds(held: Held | undefined, run: RunSummary): held is Held {
  return held?.events === run.events && held.planId === run.planId;
}

/** The plans of second etches of a run's work; they are asked for only where one was etched. */
async function secondEtchesOf(
  { plans }: Pick<KeptRecords, 'plans'>,
  { workId }: RunSummary,
  events: readonly RunEvent[],
): Promise<readonly KeptSecondEtch[]> {
  const etched = events.some(
    ({ kind, payload }) => kind === 'laid' || (kind === 'remembered' && payload.place != null),
  );
  return etched ? plans.listSecond(workId) : [];
}

/** Reads on from where a log was read to; notes are left out, which change nothing about a run's state. */
async function readOn(
  { runs }: Pick<KeptRecords, 'runs'>,
  runId: string,
  events: RunEvent[],
): Promise<RunEvent[]> {
  for (;;) {
    const after = events.at(-1)?.sequence ?? 0;
    const page = await runs.events(runId, { after, limit: eventsEach, without: ['note'] });
    for (const event of page) events.push(event);
    if (page.length < eventsEach) return events;
    await new Promise(setImmediate);
  }
}

/** Sequence numbers of undos that take back a note. */
async function undoneNotes(
  { runs }: Pick<KeptRecords, 'runs'>,
  runId: string,
  events: readonly RunEvent[],
): Promise<ReadonlySet<number>> {
  const found = new Set<number>();
  const undos = events.filter((event) => event.kind === 'undo');
  if (undos.length === 0) return found;
  // only what is not among those that were read can be a note
  const read = new Set(events.map(({ clientId }) => clientId));
  for (const event of undos) {
    if (read.has(event.payload.clientId)) continue;
    const target = await runs.eventOf(runId, event.payload.clientId);
    if (target?.kind === 'note' && target.sequence < event.sequence) found.add(event.sequence);
  }
  return found;
}
