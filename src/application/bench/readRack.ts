import type { LeavingList, RackLine } from '../../records/bench.ts';
import type { RunSummary } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { leavingList } from '../../studio/bench/leavingList.ts';
import { inRackOrder } from '../../studio/bench/rackOrder.ts';
import { routeOf } from '../../studio/bench/runState.ts';
import { standingOf } from '../../studio/bench/standing.ts';
import { type ReadRunParts, stateOf } from './readRun.ts';

export interface ReadRackParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<KeptRecords, 'stones'>;
}

/** More works in use than a rack holds. */
const mostLines = 500;
/** A stone counts as in hand so long after the last thing that was logged, ms: a working day. Our rule. */
const inHandMs = 16 * 3_600_000;

/** One line for every work in use, what can wait least first. */
export async function readRack(parts: ReadRackParts): Promise<readonly RackLine[]> {
  const { store, now } = parts;
  const runs = new Map((await store.runs.newestOfWorks()).map((run) => [run.workId, run]));
  const asked = {
    search: '',
    archived: 'no',
    stone: null,
    stage: null,
    after: null,
    limit: mostLines,
  } as const;
  const page = await store.works.list(asked);
  const lines: RackLine[] = [];
  for (const { id, title, stoneId, stoneName } of page?.works ?? []) {
    const run = runs.get(id);
    const standing =
      run && run.events > 0 ? (await stateOf(parts, run)).standing : await typedStanding(store, id, now());
    if (standing) lines.push({ workId: id, title, stoneId, stoneName, runId: run?.id ?? null, standing });
  }
  return inRackOrder(lines);
}

/** What to do before leaving, for every stone that something was logged of within a day, and for the room. */
export async function readLeaving(parts: ReadRackParts): Promise<LeavingList> {
  const inHand: RackLine[] = [];
  let acidOut = false;
  for (const line of await readRack(parts)) {
    if (line.runId === null) continue;
    const run = (await parts.store.runs.find(line.runId))!;
    if (!(await inHandNow(parts, run))) continue;
    inHand.push(line);
    const plan = run.planId === null ? null : await parts.store.plans.findFirst(run.workId, run.planId);
    const etched = line.standing.stage?.includes('etch') ?? false;
    acidOut ||= etched && routeOf(plan) === 'acid';
  }
  return leavingList(inHand, acidOut);
}

async function inHandNow({ store, now }: ReadRackParts, run: RunSummary): Promise<boolean> {
  const [last] = await store.runs.events(run.id, { after: run.events - 1, limit: 1 });
  return last !== undefined && now().getTime() - Date.parse(last.receivedAt) <= inHandMs;
}

async function typedStanding(
  { works }: Pick<KeptRecords, 'works'>,
  workId: string,
  now: Date,
): Promise<RackLine['standing'] | null> {
  const work: Work | null = await works.find(workId);
  if (work === null) return null;
  return standingOf({
    work,
    stages: [],
    hand: null,
    lastSign: null,
    wet: false,
    route: 'unknown',
    now,
  });
}
