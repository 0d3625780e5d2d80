import type { LeavingList, RackLine } from '../../records/rack.ts';
import { leavingList } from '../../studio/bench/leavingList.ts';
import { routeOf } from '../../studio/bench/runState.ts';
import { type ReadRackParts, readRack } from './readRack.ts';

/** A stone counts as in hand so long after the last thing that was logged, ms: a working day. Our rule. */
const inHandMs = 16 * 3_600_000;

/**
 * What to do before leaving: for every stone that something was logged of within a day or that asks for gum now, and
 * for the room.
 */
export async function readLeaving(parts: ReadRackParts): Promise<LeavingList> {
  const inHand: RackLine[] = [];
  let acidOut = false;
  for (const line of (await readRack(parts)).lines) {
    if (!line.standing.gumNow && !line.standing.wet && !(await loggedLately(parts, line.runId))) continue;
    inHand.push(line);
    acidOut ||= (line.standing.stage?.includes('etch') ?? false) && (await etchedWithAcid(parts, line.runId));
  }
  return leavingList(inHand, acidOut);
}

async function loggedLately({ store, now }: ReadRackParts, runId: string | null): Promise<boolean> {
  const run = runId === null ? null : await store.runs.find(runId);
  if (run === null || run.events === 0) return false;
  const [last] = await store.runs.events(run.id, { after: run.events - 1, limit: 1 });
  return last !== undefined && now().getTime() - Date.parse(last.receivedAt) <= inHandMs;
}

async function etchedWithAcid({ store }: ReadRackParts, runId: string | null): Promise<boolean> {
  const run = runId === null ? null : await store.runs.find(runId);
  if (run === null || run.planId === null) return false;
  return routeOf(await store.plans.findFirst(run.workId, run.planId)) === 'acid';
}
