import { createHash } from 'node:crypto';
import type { RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { RunFold } from '../../studio/bench/foldRun.ts';

/** What logs amount to, kept on the disk beside them: a cache that is dropped as soon as anything does not match. */
export interface FoldShelf {
  /** As kept for exactly so many events by these rules; null where there is nothing, or nothing sound. */
  read(run: RunSummary): Promise<RunFold | null>;
  /** Keeps an outcome; where it can't be kept, it is worked out again the next time. */
  keep(run: RunSummary, fold: RunFold): Promise<void>;
}

/** @param version by which rules logs are read now */
export function createFoldShelf({ folds }: Pick<KeptRecords, 'folds'>, version: string): FoldShelf {
  const sealOf = ({ id, planId, events }: RunSummary, json: string) =>
    createHash('sha256')
      .update(JSON.stringify([id, planId, events, version]))
      .update(json)
      .digest('hex');
  return {
    async read(run) {
      const kept = await folds.find(run.id);
      if (kept === null || kept.events !== run.events || kept.version !== version) return null;
      return kept.seal === sealOf(run, kept.json) ? (JSON.parse(kept.json) as RunFold) : null;
    },
    async keep(run, fold) {
      const json = JSON.stringify(fold);
      try {
        await folds.keep(run.id, { events: run.events, version, seal: sealOf(run, json), json });
      } catch {
        // a full or locked disk must not stop the bench: the log holds everything
      }
    },
  };
}
