import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { CopiesState, CopyBusy, CopyCheck } from '../../records/copies.ts';
import { threadModule } from '../threads/runInThread.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';
import type { CheckOrder } from './checkCopy.ts';
import { judgeCopiesFolder, rememberCopies } from './copiesFolder.ts';
import { bytesWritten, copiesThere, diskOf } from './copiesThere.ts';
import { copyDay, copyName } from './copyNames.ts';
import { type CopyOrder, type GoodCopy, lastGoodCopy, type MadeCopy } from './makeCopy.ts';
import { keptCopies } from './thinCopies.ts';

/** One backup a day while the folder is served. */
export interface DailyCopies {
  state(): Promise<CopiesState>;
  /** Makes today's copy unless it is there; awaits it. */
  check(): Promise<void>;
  /** Begins to make today's copy, in place of one that is there; `not-found` where they go nowhere. */
  copyNow(): Result<null>;
  /** Begins to read a day's copy back; `not-found` where there is none. */
  verify(day: string): Promise<Result<null>>;
  /** Sends copies to another folder from now on, and remembers it; null: no more are made. As judging it fails. */
  goTo(folder: string | null): Promise<Result<null>>;
  stop(): Promise<void>;
}

export interface DailyCopiesParts {
  readonly dataFolder: string;
  /** null: none are made. */
  readonly folder: string | null;
  readonly now: () => Date;
  /** Told of every copy that failed, for the log. */
  readonly complain: (words: string) => void;
}

/** A machine that sleeps at night still gets its copy within the hour it wakes. */
const everyMs = 3_600_000;
/** The first one leaves the start alone. */
const firstAfterMs = 10_000;

/** What is known of the copies in one folder. */
interface Known {
  readonly folder: string | null;
  readonly lastGood: GoodCopy | null;
  readonly notMade: CopiesState['notMade'];
  /** The day whose copy was made and read back. */
  readonly done: string;
}

const nothingKnown = { lastGood: null, notMade: null, done: '' } as const;

/** Begins to make copies: one soon, then one a day, off the main thread. One that was not made is tried again every hour. */
export function createDailyCopies({ dataFolder, folder, now, complain }: DailyCopiesParts): DailyCopies {
  const desk = createThreadDesk(1);
  const copyModule = threadModule(import.meta.url, 'copyThread');
  const checkModule = threadModule(import.meta.url, 'checkThread');
  const checks = new Map<string, CopyCheck>();
  let known: Known = { folder, ...nothingKnown };
  let busy: Omit<CopyBusy, 'bytes'> | null = null;
  let copyWaits = false;
  let stopped = false;
  let running: Promise<void> = Promise.resolve();

  /** One thing after the other; what goes wrong unforeseen is told in the log. */
  function inTurn(act: CopyBusy['act'], day: () => string, work: () => Promise<void>): Promise<void> {
    running = running
      .then(async () => {
        if (stopped) return;
        busy = { act, day: day(), since: now().toISOString() };
        await work();
      })
      .catch((error: unknown) => complain(`The daily copy failed: ${error}`))
      .finally(() => {
        busy = null;
      });
    return running;
  }

  async function make(anew: boolean): Promise<void> {
    const place = known.folder;
    const at = now();
    if (place === null || (!anew && known.done === copyDay(at))) return;
    const order: CopyOrder = { dataFolder, folder: place, at: at.toISOString(), anew };
    const ran = await desk.run<Result<MadeCopy>>(copyModule, order);
    if (stopped || known.folder !== place) return;
    const made = ran.ok ? ran.value : ran;
    if (!made.ok) return tell(place, at, made.error);
    const { check, ...good } = made.value;
    checks.set(good.file, check);
    known = { folder: place, lastGood: good, notMade: null, done: copyDay(at) };
  }

  async function tell(place: string, at: Date, error: Failure): Promise<void> {
    const lastGood = known.lastGood ?? (await lastGoodCopy(place));
    known = { ...known, lastGood, notMade: { at: at.toISOString(), failure: error } };
    complain(`The daily copy failed: ${error.message} ${error.remedy}`);
  }

  async function readBack(file: string): Promise<void> {
    const at = now().toISOString();
    const order: CheckOrder = { file, at };
    const ran = await desk.run<CopyCheck>(checkModule, order);
    if (stopped) return;
    const unread = { at, madeAt: null, photographs: null, concerns: [] };
    const check = ran.ok ? ran.value : { ...unread, failure: ran.error };
    checks.set(file, check);
    // what was good no longer is: another is named in its place, and today's is made again
    if (check.failure === null || file !== known.lastGood?.file || known.folder === null) return;
    known = { ...known, lastGood: await lastGoodCopy(known.folder), done: '' };
  }

  const today = () => copyDay(now());
  const check = (): Promise<void> => {
    if (known.folder === null || known.done === today()) return running;
    return inTurn('copying', today, () => make(false));
  };
  const timer = setInterval(check, everyMs);
  const first = setTimeout(check, firstAfterMs);
  timer.unref();
  first.unref();
  return {
    async state() {
      const { folder: place, lastGood, notMade } = known;
      const keeps = keptCopies;
      if (place === null)
        return {
          folder: null,
          lastGood,
          notMade,
          busy: null,
          copies: [],
          keeps,
          freeBytes: null,
          sameDisk: null,
        };
      const written = busy?.act === 'copying' ? await bytesWritten(place, busy.day) : null;
      return {
        folder: place,
        lastGood,
        notMade,
        busy: busy && { ...busy, bytes: written },
        copies: await copiesThere(place, checks),
        keeps,
        ...(await diskOf(dataFolder, place)),
      };
    },
    check,
    copyNow() {
      if (known.folder === null) return fail(failure('not-found', { what: 'folder for daily copies' }));
      if (copyWaits || busy?.act === 'copying') return ok(null);
      copyWaits = true;
      void inTurn('copying', today, () => {
        copyWaits = false;
        return make(true);
      });
      return ok(null);
    },
    async verify(day) {
      const file = known.folder === null ? null : join(known.folder, copyName(day));
      const found = file === null ? null : await stat(file).catch(() => null);
      if (file === null || found === null) return fail(failure('not-found', { what: 'copy of that day' }));
      void inTurn(
        'checking',
        () => day,
        () => readBack(file),
      );
      return ok(null);
    },
    async goTo(place) {
      const judged = place === null ? ok(null) : await judgeCopiesFolder(dataFolder, place);
      if (!judged.ok) return judged;
      const kept = judged.value ?? known.folder;
      if (kept === null) return ok(null);
      const remembered = await rememberCopies(dataFolder, { folder: kept, stopped: judged.value === null });
      if (!remembered.ok) return remembered;
      if (judged.value !== known.folder) known = { folder: judged.value, ...nothingKnown };
      void check();
      return ok(null);
    },
    async stop() {
      stopped = true;
      clearInterval(timer);
      clearTimeout(first);
      await desk.stop();
      await running;
    },
  };
}
