import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { limitConcurrency } from './limitConcurrency.ts';
import { type RunningThread, runInThread } from './runInThread.ts';

/** Heavy work off the main thread, so many pieces at a time, each in a thread of its own. */
export interface ThreadDesk {
  /**
   * Waits for a place, runs a module on `data`, and hands over its answer; `stopped`, `internal` or what the limit says
   * without one.
   * @param called aborted, it calls the work off, begun or not
   */
  run<Answer>(module: URL, data: unknown, limit?: TimeLimit, called?: AbortSignal): Promise<Result<Answer>>;
  /** Ends all work where it stands; what is asked for later is stopped. */
  stop(): Promise<void>;
}

/** How long a piece of work may take, and what is said of one that takes longer. */
export interface TimeLimit {
  /** From the start of its thread, ms: waiting for a place does not count. */
  readonly withinMs: number;
  readonly late: Failure;
}

/**
 * A desk with room for `atOnce` pieces of work.
 * @param start how each is begun: in a thread unless told otherwise
 */
export function createThreadDesk(
  atOnce: number,
  start: <Answer>(module: URL, data: unknown) => RunningThread<Answer> = runInThread,
): ThreadDesk {
  const limited = limitConcurrency(atOnce);
  const threads = new Set<RunningThread<unknown>>();
  let stopped = false;
  return {
    run<Answer>(
      module: URL,
      data: unknown,
      limit?: TimeLimit,
      called?: AbortSignal,
    ): Promise<Result<Answer>> {
      return limited(async () => {
        if (stopped || called?.aborted) return fail(failure('stopped'));
        const thread = start<Answer>(module, data);
        threads.add(thread);
        let late = false;
        const timer =
          limit &&
          setTimeout(() => {
            late = true;
            void thread.terminate();
          }, limit.withinMs);
        const callOff = () => void thread.terminate();
        called?.addEventListener('abort', callOff);
        const end = await thread.end;
        called?.removeEventListener('abort', callOff);
        clearTimeout(timer);
        threads.delete(thread);
        void thread.terminate();
        switch (end.kind) {
          case 'answered':
            return ok(end.answer);
          case 'terminated':
            return fail(limit && late ? limit.late : failure('stopped'));
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
