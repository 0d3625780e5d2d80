import type { RunState } from '../../records/bench.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { RunSummary } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import type { RunFold } from './foldRun.ts';
import { nowAndNext } from './nowAndNext.ts';
import { etches, stageDone } from './stagesDone.ts';
import { type StandingInput, standingOf } from './standing.ts';
import type { EtchRoute } from './waitRanges.ts';

export interface RunStateInput {
  readonly run: RunSummary;
  readonly work: Pick<Work, 'stage' | 'origin'>;
  readonly plan: KeptPlan | null;
  readonly fold: RunFold;
  /** What was done to the stone at the press last; null: it was not printed there. */
  readonly press?: RunState['press'];
  readonly now: Date;
}

/** A run as it stands now, worked out from what happened: a screen that slept or was restarted sees the same. */
export function runState({ run, work, plan, fold, press = null, now }: RunStateInput): RunState {
  const { stages, contacts, buffedRounds, poured, facts, picked } = fold;
  const etch = stages.findLast(({ stage }) => stage === 'first-etch');
  const since = etch?.started?.ms ?? null;
  const first = contacts.filter(
    ({ stage, laidAt }) => stage === 'first-etch' && (since === null || Date.parse(laidAt) >= since),
  );
  const startedMs = fold.etchAnnounced === null ? null : since;
  const underWay = plan !== null && etch?.state === 'open';
  return {
    ...run,
    at: now.toISOString(),
    stages: stages.map(stageDone),
    contacts,
    buffedRounds,
    poured,
    facts,
    picked,
    moves: underWay ? nowAndNext(plan.plan, first, startedMs, now.getTime()) : null,
    standing: standingOf({
      work,
      stages,
      hand: fold.hand,
      lastSign: fold.lastSign,
      wet: isWet(fold),
      route: routeOf(plan),
      press: pressMoment(press),
      now,
    }),
    press,
  };
}

/** The press has a clock of its own: two moments are compared, no time between them is told. */
export function pressMoment(press: RunState['press']): StandingInput['press'] {
  return press && { moment: { ms: Date.parse(press.at), clock: -1 }, gummed: press.gummed };
}

/** Whether some place still carries etch. */
export function isWet({ stages, contacts }: Pick<RunFold, 'stages' | 'contacts'>): boolean {
  const etching = stages.some(({ stage, state }) => state === 'open' && etches.includes(stage));
  return etching && contacts.some(({ liftedAt }) => liftedAt === null);
}

/** Whether a plan's etch is acid in gum, which rests less long. */
export function routeOf(plan: KeptPlan | null): EtchRoute {
  if (plan === null) return 'unknown';
  return plan.request.table.rows.some(({ recipe }) => recipe.kind === 'drops') ? 'acid' : 'tannic';
}
