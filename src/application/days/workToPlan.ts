import type { RunState } from '../../records/bench.ts';
import type { Deadline } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import type { RoomTime } from '../../records/studio.ts';
import type { Work } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { lineRule } from '../../studio/bench/lineStages.ts';
import { routeOf } from '../../studio/bench/runState.ts';
import { corrections } from '../../studio/bench/stagesDone.ts';
import type { WorkToPlan } from '../../studio/days/planning.ts';
import type { LinePlace } from '../../studio/days/stagesLeft.ts';
import { benchRun } from '../../studio/etch/benchRun.ts';
import { type ReadRunParts, stateOf } from '../bench/readRun.ts';
import { readStanding } from '../bench/readStanding.ts';

export interface PlanDaysParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<KeptRecords, 'stones' | 'studio' | 'deadlines'>;
}

/** Everything that a work's days are planned from: where its newest run or what was typed says that it stands. */
export async function workToPlan(
  parts: PlanDaysParts,
  work: Work,
  deadline: Deadline,
  roomTimes: readonly RoomTime[],
): Promise<WorkToPlan> {
  const { store } = parts;
  const stone = await store.stones.find(work.stoneId);
  if (stone === null) throw new Error(`the stone of work ${work.id} is gone, which the database forbids`);
  const [run] = await store.runs.ofWork(work.id);
  const state = run && run.events > 0 ? await stateOf(parts, run) : null;
  const plan = await store.plans.newestFirst(work.id);
  const lasts = plan === null ? null : benchRun(plan.plan).lastsSeconds;
  const told = state && logged(state);
  const { stage } = told ? { stage: null } : await readStanding(parts, work, null, null);
  return {
    workId: work.id,
    title: work.title,
    stoneName: stone.name,
    place: told?.place ?? typed(work, stage),
    since: told?.since ?? null,
    route: routeOf(plan),
    timed: {
      faceCm2: (stone.widthMm * stone.heightMm) / 100,
      firstEtch: plan && lasts !== null ? { seconds: lasts, people: plan.request.people } : null,
      // a work's own come first
      times: [...deadline.times, ...roomTimes],
    },
    deadline,
  };
}

/** What the log tells; null where it tells of no stage of the line. */
function logged({ stages }: RunState): { readonly place: LinePlace; readonly since: number | null } | null {
  const told = stages.filter(({ state }) => state !== 'skipped');
  const worked = told.filter(({ stage }) => !lineRule(stage).waiting && !corrections.includes(stage));
  const last = worked.at(-1);
  if (!last) return null;
  return {
    place: {
      told: told.map(({ stage, state }) => ({ stage, underWay: state === 'open' })),
      skipped: stages.filter(({ state }) => state === 'skipped').map(({ stage }) => stage),
    },
    since: last.endedAt === null ? null : Date.parse(last.endedAt),
  };
}

/** What was typed says which stage was done last; of proofs and editions, that they are under way. */
function typed({ stage }: Work, standing: LineStage | null): LinePlace {
  if (standing === null) return { told: [], skipped: [] };
  // washed out means with the base on
  const done = stage === 'washed-out' ? 'base' : standing;
  return { told: [{ stage: done, underWay: stage === 'proofs' || stage === 'edition' }], skipped: [] };
}
