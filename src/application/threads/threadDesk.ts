import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { limitConcurrency } from './limitConcurrency.ts';
import { type RunningThread, runInThread } from './runInThread.ts';

/** Heavy work off the main thread, so many pieces at a time, each in a thread of its own. */
export interface ThreadDesk {
  /** Waits for a place, runs a module on `data`, and hands over its answer; `cancelled` or `internal` without one. */
  run<Answer>(module: URL, data: unknown): Promise<Result<Answer>>;
  /** Ends all work where it stands; what is asked for later is cancelled. */
  stop(): Promise<void>;
}

/** A desk with room for `atOnce` threads. */
export function createThreadDesk(atOnce: number): ThreadDesk {
  const limited = limitConcurrency(atOnce);
  const threads = new Set<RunningThread<unknown>>();
  let stopped = false;
  return {
    run<Answer>(module: URL, data: unknown): Promise<Result<Answer>> {
      return limited(async () => {
        if (stopped) return fail(failure('cancelled'));
        const thread = runInThread<never, Answer>(module, data);
        threads.add(thread);
        const end = await thread.end;
        threads.delete(thread);
        void thread.terminate();
        switch (end.kind) {
          case 'answered':
            return ok(end.answer);
          case 'terminated':
            return fail(failure('cancelled'));
          case 'crashed':
            return fail(failure('internal', { why: end.why }));
          default:
            return end satisfies never;
        }
      });
    },
    async stop() {
      stopped = true;
      await Promise.all([...threads].map((thread) => thread.terminate()));
    },
  };
}
