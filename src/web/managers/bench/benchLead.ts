import type { RunState } from '../../../records/bench.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { LineStage } from '../../../records/run.ts';
import type { WorkStage } from '../../../records/work.ts';
import { lineCourse } from '../../../studio/bench/lineCourse.ts';
import { etches } from '../../../studio/bench/stagesDone.ts';

/** What the bench leads through now. */
export type BenchLead =
  /** The first etch by its plan's schedule, before it or in it. */
  | { readonly kind: 'scheduled' }
  /** An etch under way that no schedule leads. */
  | { readonly kind: 'free'; readonly stage: LineStage }
  /** Any other stage of the line, or the time between two. */
  | { readonly kind: 'stage' };

/**
 * Which of its ways the bench shows. A run that was begun from a plan leads to its etch at once, whatever comes before
 * it in the line; the rest can be begun from there.
 * @param wanted true where whoever began the run came from the plan of the first etch
 */
export function benchLead(
  state: Pick<RunState, 'stages'>,
  workStage: WorkStage,
  plan: KeptPlan | null,
  wanted: boolean,
): BenchLead {
  const scheduled = plan !== null && plan.plan.schedule.steps.length > 0;
  const { open, last, next } = lineCourse(state.stages, workStage);
  if (open) {
    if (open.stage === 'first-etch' && scheduled) return { kind: 'scheduled' };
    return etches.includes(open.stage) ? { kind: 'free', stage: open.stage } : { kind: 'stage' };
  }
  const toCome = last === null ? wanted || workStage === 'drawn' : next === 'first-etch';
  return scheduled && toCome ? { kind: 'scheduled' } : { kind: 'stage' };
}
