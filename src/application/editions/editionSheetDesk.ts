import type { Result } from '../../foundation/result.ts';
import type { EditionSheetInput } from '../../paper/sheets/editionSheet.ts';
import { threadModule } from '../threads/runInThread.ts';
import { sheetTask } from '../threads/sheetTask.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';

/** Sets documentation sheets off the main thread, one at a time. */
export interface EditionSheetDesk {
  make(input: EditionSheetInput): Promise<Result<Uint8Array>>;
  /** Ends all work where it stands. */
  stop(): Promise<void>;
}

/** A desk without work. */
export function createEditionSheetDesk(): EditionSheetDesk {
  const desk = createThreadDesk(1);
  const module = threadModule(import.meta.url, 'editionSheetThread');
  return { make: (input) => desk.run<Uint8Array>(module, sheetTask(input)), stop: desk.stop };
}
