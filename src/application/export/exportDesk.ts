import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { ok, type Result } from '../../foundation/result.ts';
import type { DataFolder } from '../../store/files/dataFolder.ts';
import { threadModule } from '../threads/runInThread.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';
import type { ExportCounts } from './writeExport.ts';

/** What the thread is given. */
export interface ExportTask {
  readonly root: string;
  /** The archive to be made. */
  readonly file: string;
}

/** Writes exports off the main thread, one at a time. */
export interface ExportDesk {
  /** Path of an archive that whoever asked has to remove; it lies where half-made files lie. */
  zip(folder: DataFolder): Promise<Result<string>>;
  /** Ends all work where it stands. */
  stop(): Promise<void>;
}

/** A desk without work. */
export function createExportDesk(): ExportDesk {
  const desk = createThreadDesk(1);
  const module = threadModule(import.meta.url, 'exportThread');
  return {
    async zip(folder) {
      const file = join(folder.incoming, `${randomUUID()}.zip`);
      const task: ExportTask = { root: folder.root, file };
      const run = await desk.run<Result<ExportCounts>>(module, task);
      const written = run.ok ? run.value : run;
      return written.ok ? ok(file) : written;
    },
    stop: desk.stop,
  };
}
