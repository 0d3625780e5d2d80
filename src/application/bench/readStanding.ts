import type { Standing } from '../../records/bench.ts';
import type { GumState } from '../../records/rack.ts';
import type { RunSummary } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import { standingOf } from '../../studio/bench/standing.ts';
import { type ReadRunParts, stateOf } from './readRun.ts';

/**
 * How the stone of a work stands now.
 * @param run the work's newest; null: only what was typed is known
 */
export async function readStanding(
  parts: ReadRunParts,
  work: Work,
  run: RunSummary | null,
): Promise<Standing> {
  if (run !== null && run.events > 0) return (await stateOf(parts, run)).standing;
  return standingOf({
    work,
    stages: [],
    hand: null,
    lastSign: null,
    wet: false,
    route: 'unknown',
    now: parts.now(),
  });
}

/** Whether the stone of a work lies under gum; null where there is no such work. */
export async function readGum(parts: ReadRunParts, workId: string): Promise<GumState | null> {
  const work = await parts.store.works.find(workId);
  if (work === null) return null;
  const [run] = await parts.store.runs.ofWork(workId);
  const { gummed, gumNow } = await readStanding(parts, work, run ?? null);
  return { gummed, gumNow };
}
