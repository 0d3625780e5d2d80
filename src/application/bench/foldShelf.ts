import { createHash } from 'node:crypto';
import type { RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { LogReading } from '../../studio/bench/foldRun.ts';

/** A run's log as far as it was read, with what its etches went by then. */
export interface KeptReading {
  /** Sequence number of the last event that was read, notes counted. */
  readonly events: number;
  readonly planId: string | null;
  /** Whether etch was ever laid: only then second etches matter. */
  readonly etched: boolean;
  /** The plans of second etches that it was read with. */
  readonly seconds: readonly string[];
  readonly log: LogReading;
}

/** What logs amount to, kept on the disk beside them: a cache that is dropped as soon as anything does not match. */
export interface FoldShelf {
  /** As kept by these rules and for the run's plan, for as many events as it has or fewer; null where nothing sound is there. */
  read(run: RunSummary): Promise<KeptReading | null>;
  /** Keeps a reading; where it can't be kept, it is worked out again the next time. */
  keep(runId: string, reading: KeptReading): Promise<void>;
}

/** @param version by which rules logs are read now */
export function createFoldShelf({ folds }: Pick<KeptRecords, 'folds'>, version: string): FoldShelf {
  const sealOf = (runId: string, events: number, json: string) =>
    createHash('sha256')
      .update(JSON.stringify([runId, events, version]))
      .update(json)
      .digest('hex');
  return {
    async read(run) {
      const kept = await folds.find(run.id);
      if (kept === null || kept.events > run.events || kept.version !== version) return null;
      if (kept.seal !== sealOf(run.id, kept.events, kept.json)) return null;
      const reading = JSON.parse(kept.json) as KeptReading;
      return reading.planId === run.planId ? reading : null;
    },
    async keep(runId, reading) {
      const json = JSON.stringify(reading);
      const { events } = reading;
      try {
        await folds.keep(runId, { events, version, seal: sealOf(runId, events, json), json });
      } catch {
        // a full or locked disk must not stop the bench: the log holds everything
      }
    },
  };
}
