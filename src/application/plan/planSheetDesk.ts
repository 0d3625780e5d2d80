import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { limitConcurrency } from '../threads/limitConcurrency.ts';
import { type RunningThread, runInThread, threadModule } from '../threads/runInThread.ts';
import type { PlanSheetTask } from './planSheetThread.ts';

/** Sets the sheets of plans off the main thread, one at a time. */
export interface PlanSheetDesk {
  make(task: PlanSheetTask): Promise<Result<Uint8Array>>;
  /** Ends all work where it stands. */
  stop(): Promise<void>;
}

/** A desk without work. */
export function createPlanSheetDesk(): PlanSheetDesk {
  const limited = limitConcurrency(1);
  let running: RunningThread<Uint8Array> | null = null;
  let stopped = false;
  return {
    make: (task) =>
      limited(async () => {
        if (stopped) return fail(failure('cancelled'));
        running = runInThread<never, Uint8Array>(threadModule(import.meta.url, 'planSheetThread'), task);
        const end = await running.end;
        running = null;
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
      }),
    async stop() {
      stopped = true;
      await running?.terminate();
    },
  };
}
