import type { Standing } from '../../records/bench.ts';
import type { GumState } from '../../records/rack.ts';
import type { RunSummary } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import { isWet, pressMoment } from '../../studio/bench/runState.ts';
import { standingOf } from '../../studio/bench/standing.ts';
import type { PressHand } from '../../studio/editions/pressHand.ts';
import { pressHands } from './pressHands.ts';
import type { ReadRunParts } from './readRun.ts';

/**
 * How the stone of a work stands now.
 * @param run the work's newest; null: only what was typed is known
 * @param printed what was done to it at the press last; null: it was not printed
 */
export async function readStanding(
  { runFolds, now }: Pick<ReadRunParts, 'runFolds' | 'now'>,
  work: Pick<Work, 'stage' | 'origin'>,
  run: RunSummary | null,
  printed: PressHand | null,
): Promise<Standing> {
  const press = pressMoment(printed);
  if (run === null || run.events === 0) return standingOf({ ...nothingTold, work, press, now: now() });
  const { fold, route } = await runFolds.told(run);
  return standingOf({ ...fold, work, wet: isWet(fold), route, press, now: now() });
}

const nothingTold = { stages: [], hand: null, lastSign: null, wet: false, route: 'unknown' } as const;

/** Whether the stones of works lie under gum, by the works' ids; those that are not there are left out. */
export async function readGum(
  parts: ReadRunParts,
  workIds: readonly string[],
): Promise<ReadonlyMap<string, GumState>> {
  const gum = new Map<string, GumState>();
  const runs = await parts.store.waits.newestRuns(workIds);
  const hands = await pressHands(parts.store, workIds);
  for (const id of workIds) {
    const work = await parts.store.works.find(id);
    if (work === null) continue;
    const { gummed, gumNow } = await readStanding(parts, work, runs.get(id) ?? null, hands.get(id) ?? null);
    gum.set(id, { gummed, gumNow });
  }
  return gum;
}
