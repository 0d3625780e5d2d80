import type { Result } from '../../foundation/result.ts';
import type { CopiesState } from '../../records/copies.ts';
import { threadModule } from '../threads/runInThread.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';
import { copyName } from './copyNames.ts';
import { type CopyOrder, type GoodCopy, lastGoodCopy } from './makeCopy.ts';

/** One backup a day while the folder is served. */
export interface DailyCopies {
  state(): CopiesState;
  /** Makes today's copy unless it is there; awaits it. */
  check(): Promise<void>;
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

/** Begins to make copies: one soon, then one a day, off the main thread. A failed one is tried again every hour. */
export function createDailyCopies({ dataFolder, folder, now, complain }: DailyCopiesParts): DailyCopies {
  const desk = createThreadDesk(1);
  const module = threadModule(import.meta.url, 'copyThread');
  let state: CopiesState = { folder, lastGood: null, failed: null };
  let stopped = false;
  let done = '';
  let running: Promise<void> = Promise.resolve();

  async function make(place: string): Promise<void> {
    const at = now();
    if (stopped || done === copyName(at)) return;
    const order: CopyOrder = { dataFolder, folder: place, at: at.toISOString() };
    const made: Result<GoodCopy> = await desk
      .run<Result<GoodCopy>>(module, order)
      .then((run) => (run.ok ? run.value : run));
    if (stopped) return;
    if (made.ok) {
      done = copyName(at);
      state = { folder, lastGood: made.value, failed: null };
      return;
    }
    const { message, remedy } = made.error;
    const lastGood = state.lastGood ?? (await lastGoodCopy(place));
    state = { folder, lastGood, failed: { at: at.toISOString(), failure: made.error } };
    complain(`The daily copy failed: ${message} ${remedy}`);
  }

  const check = (): Promise<void> => {
    if (folder === null) return Promise.resolve();
    running = running
      .then(() => make(folder))
      .catch((error: unknown) => complain(`The daily copy failed: ${error}`));
    return running;
  };
  const timer = folder === null ? null : setInterval(check, everyMs);
  const first = folder === null ? null : setTimeout(check, firstAfterMs);
  timer?.unref();
  first?.unref();
  return {
    state: () => state,
    check,
    async stop() {
      stopped = true;
      if (timer) clearInterval(timer);
      if (first) clearTimeout(first);
      await desk.stop();
      await running;
    },
  };
}
