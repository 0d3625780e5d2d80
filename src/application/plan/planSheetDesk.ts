import type { Result } from '../../foundation/result.ts';
import { threadModule } from '../threads/runInThread.ts';
import { sheetTask } from '../threads/sheetTask.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';
import type { PlanSheetTask } from './planSheetThread.ts';

/** Sets the sheets of plans off the main thread, one at a time. */
export interface PlanSheetDesk {
  make(task: PlanSheetTask): Promise<Result<Uint8Array>>;
  /** Ends all work where it stands. */
  stop(): Promise<void>;
}

/** A desk without work. */
export function createPlanSheetDesk(): PlanSheetDesk {
  const desk = createThreadDesk(1);
  const module = threadModule(import.meta.url, 'planSheetThread');
  return { make: (task) => desk.run<Uint8Array>(module, sheetTask(task)), stop: desk.stop };
}
