import type { EtchPlan } from '../../records/etch.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { RunEvent, RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { foldOf, type LogReading, type RunFold, readFurther, readWhole } from '../../studio/bench/foldRun.ts';
import { routeOf } from '../../studio/bench/runState.ts';
import type { EtchRoute } from '../../studio/bench/waitRanges.ts';
import type { EtchesPlanned } from '../../studio/etch/contactRules.ts';
import { createFoldShelf, type KeptReading } from './foldShelf.ts';
import type { RunAnnouncement } from './logging.ts';
import { createNewest } from './newest.ts';

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
  /** A second etch of a work was planned: what its runs came to without that plan holds no more. */
  planned(workId: string): void;
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

/** A reading with what its etches go by. */
interface Told {
  readonly reading: KeptReading;
  readonly planned: EtchesPlanned;
}

interface Held {
  readonly events: number;
  readonly planId: string | null;
  /** How many second etches of its work had been planned since these folds were opened. */
  readonly plannings: number;
  readonly reading: Promise<KeptReading>;
  readonly fold: Promise<RunFold>;
  readonly route: EtchRoute;
}

/** @param longFrom events from which on a fold is kept beside its log. @param eventsHeld events of folds in memory at most. */
export function createRunFolds({
  store,
  version,
  longFrom = longLog,
  eventsHeld = eventsOfFolds,
}: RunFoldParts): RunFolds {
  const shelf = createFoldShelf(store, version);
  const waiting = new Map<string, NodeJS.Timeout>();
  const plannings = new Map<string, number>();
  let keeping: Promise<unknown> = Promise.resolve();
  const folds = createNewest<Held>(eventsHeld, ({ events }) => Math.max(events, lightestFold));

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
    await shelf.keep(runId, await (await heldOf(run)).reading);
  }

  function keepWhenQuiet(runId: string): void {
    clearTimeout(waiting.get(runId));
    const timer = setTimeout(() => void keep(runId), quietMs);
    waiting.set(runId, timer.unref());
  }

  /** A log read on from where it was known, or whole where nothing is known or what came since changes that. */
  async function read(run: RunSummary, first: EtchPlan | null, held: Held | undefined): Promise<Told> {
    const before = await knownOf(run, held);
    const events = await eventsOf(store, run, before?.events ?? 0);
    const etched = before?.etched || events.some(tellsOfEtch);
    const seconds = etched ? await store.plans.listSecond(run.workId) : [];
    const planned = { first, seconds };
    const ids = seconds.map(({ id }) => id);
    const further = before?.seconds.join() === ids.join() ? readFurther(before.log, events, planned) : null;
    const news = further === null || before?.events !== run.events;
    if (news && run.events >= longFrom) keepWhenQuiet(run.id);
    const log = further ?? (await wholeOf(run, before === null ? events : null, planned));
    return { reading: { events: run.events, planId: run.planId, etched, seconds: ids, log }, planned };
  }

  /** How far a log was read: as held in memory, else as kept on the disk. */
  async function knownOf(run: RunSummary, held: Held | undefined): Promise<KeptReading | null> {
    const known = held?.planId === run.planId ? await held.reading.catch(() => null) : null;
    if (known !== null && known.events <= run.events) return known;
    return run.events >= longFrom ? shelf.read(run) : null;
  }

  async function wholeOf(
    run: RunSummary,
    read: readonly RunEvent[] | null,
    planned: EtchesPlanned,
  ): Promise<LogReading> {
    const events = read ?? (await eventsOf(store, run, 0));
    const log = readWhole(events, planned);
    const undone = await undoneNotes(store, run.id, events);
    const takenBack = log.facts.takenBack.filter(
      ({ fact, sequence }) => fact !== 'undo-of-nothing' || !undone.has(sequence),
    );
    return { ...log, facts: { ...log.facts, takenBack } };
  }

  function hold(run: RunSummary, plan: KeptPlan | null): Held {
    const { events, planId, workId } = run;
    const told = read(run, plan?.plan ?? null, folds.get(run.id));
    const reading = told.then((one) => one.reading);
    const fold = told.then((one) => foldOf(one.reading.log, one.planned));
    const fresh = {
      events,
      planId,
      plannings: plannings.get(workId) ?? 0,
      reading,
      fold,
      route: routeOf(plan),
    };
    folds.set(run.id, fresh);
    fold.catch(() => folds.delete(run.id));
    reading.catch(() => {});
    return fresh;
  }

  /** Until its next event, a plan of its second etch, or until a run that had no plan was given one. */
  function stillHolds(held: Held | undefined, run: RunSummary): held is Held {
    if (held?.events !== run.events || held.planId !== run.planId) return false;
    return held.plannings === (plannings.get(run.workId) ?? 0);
  }

  async function heldOf(run: RunSummary): Promise<Held> {
    const held = folds.get(run.id);
    if (stillHolds(held, run)) return held;
    const plan = run.planId === null ? null : await store.plans.findFirst(run.workId, run.planId);
    const since = folds.get(run.id);
    return stillHolds(since, run) ? since : hold(run, plan);
  }

  function of(run: RunSummary, plan: KeptPlan | null): Promise<RunFold> {
    const held = folds.get(run.id);
    return (stillHolds(held, run) ? held : hold(run, plan)).fold;
  }

  async function told(run: RunSummary): Promise<ToldRun> {
    const { fold, route } = await heldOf(run);
    return { fold: await fold, route };
  }

  return {
    of,
    told,
    heard({ runId, event }) {
      if (event.sequence >= longFrom) keepWhenQuiet(runId);
    },
    planned(workId) {
      plannings.set(workId, (plannings.get(workId) ?? 0) + 1);
    },
    async settle() {
      await Promise.all([...waiting.keys()].map(keep));
      await keeping;
    },
  };
}

/** Whether an event tells of etch on a place: only then second etches matter. */
function tellsOfEtch({ kind, payload }: RunEvent): boolean {
  return kind === 'laid' || (kind === 'remembered' && payload.place != null);
}

/** A run's events after one of them; notes are left out, which change nothing about its state. */
async function eventsOf(
  { runs }: Pick<KeptRecords, 'runs'>,
  { id, events: last }: RunSummary,
  known: number,
): Promise<readonly RunEvent[]> {
  const events: RunEvent[] = [];
  let after = known;
  while (after < last) {
    const page = await runs.events(id, { after, limit: eventsEach, without: ['note'] });
    // what was logged since belongs to the next question
    for (const event of page) if (event.sequence <= last) events.push(event);
    if (page.length < eventsEach) break;
    after = page.at(-1)!.sequence;
    await new Promise(setImmediate);
  }
  return events;
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
