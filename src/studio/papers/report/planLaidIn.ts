import type { RunState } from '../../../records/bench.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { etches } from '../../bench/stagesDone.ts';

/** The plan of a run that laid its first etch by it; null where none was laid, or by no plan. */
export function planLaidIn(
  { planId, contacts, stages }: Pick<RunState, 'planId' | 'contacts' | 'stages'>,
  plan: KeptPlan | null,
): KeptPlan | null {
  if (plan === null || planId !== plan.id) return null;
  const laid =
    contacts.length > 0 || stages.some(({ stage, state }) => etches.includes(stage) && state !== 'skipped');
  return laid ? plan : null;
}
