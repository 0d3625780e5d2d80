import type { RunState } from '../../records/bench.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { RunEvent, RunSummary, RunTool } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import { contactsOf } from './contacts.ts';
import { nowAndNext } from './nowAndNext.ts';
import { readLog } from './placedEvents.ts';
import { etches, stageDone, stagesTold } from './stagesDone.ts';
import { standingOf } from './standing.ts';
import type { EtchRoute } from './waitRanges.ts';

export interface RunStateInput {
  readonly run: RunSummary;
  readonly work: Pick<Work, 'stage' | 'origin'>;
  readonly plan: KeptPlan | null;
  /** All of the run that matter, in order of their sequence numbers. */
  readonly events: readonly RunEvent[];
  readonly now: Date;
}

/** A run as it stands now, worked out from what happened: a screen that slept or was restarted sees the same. */
export function runState({ run, work, plan, events, now }: RunStateInput): RunState {
  const log = readLog(events);
  const told = stagesTold(log.placed);
  const etched = contactsOf(log.placed, told.stages, plan?.plan ?? null);
  const etch = told.stages.findLast(({ stage }) => stage === 'first-etch');
  const first = etched.contacts.filter(
    ({ stage, laidAt }) =>
      stage === 'first-etch' && (!etch?.started || Date.parse(laidAt) >= etch.started.ms),
  );
  const announced = log.placed.some(
    ({ event }) =>
      (event.kind === 'stage-started' || event.kind === 'repeated') && event.payload.stage === 'first-etch',
  );
  const startedMs = announced ? (etch?.started?.ms ?? null) : null;
  return {
    ...run,
    at: now.toISOString(),
    stages: told.stages.map(stageDone),
    contacts: etched.contacts,
    buffedRounds: etched.buffedRounds,
    facts: [...log.facts, ...told.facts, ...etched.facts].sort((a, b) => a.sequence - b.sequence),
    picked: pickedOf(log.placed.map(({ event }) => event)),
    moves: plan && etch?.state === 'open' ? nowAndNext(plan.plan, first, startedMs, now.getTime()) : null,
    standing: standingOf({
      work,
      stages: told.stages,
      placed: log.placed,
      wet:
        told.stages.some(({ stage, state }) => state === 'open' && etches.includes(stage)) &&
        etched.contacts.some(({ liftedAt }) => liftedAt === null),
      route: routeOf(plan),
      now,
    }),
  };
}

/** Whether a plan's etch is acid in gum, which rests less long. */
export function routeOf(plan: KeptPlan | null): EtchRoute {
  if (plan === null) return 'unknown';
  return plan.request.table.rows.some(({ recipe }) => recipe.kind === 'drops') ? 'acid' : 'tannic';
}

function pickedOf(events: readonly RunEvent[]): RunState['picked'] {
  const newest = new Map<RunTool, RunState['picked'][number]>();
  for (const event of events) {
    if (event.kind !== 'picked') continue;
    const { tool, id, words } = event.payload;
    newest.set(tool, { tool, id: id ?? null, words });
  }
  return [...newest.values()];
}
