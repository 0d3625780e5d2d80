import type {
  KeptPlan,
  KeptSecondEtch,
  PlanChoices,
  PlanSummary,
  SecondEtchChoices,
} from '../../records/keptPlan.ts';
import type { Paper } from '../../records/paper.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';

export const plansKey = (work: string) => ['plans', work] as const;
export const planKey = (work: string, plan: string) => ['plan', work, plan] as const;
export const secondEtchesKey = (work: string) => ['second-etches', work] as const;

/** The plans of a work's first etch, newest first. */
export async function listPlans(work: string): Promise<readonly PlanSummary[]> {
  return (await ask<{ plans: readonly PlanSummary[] }>(`/api/works/${work}/plans`)).plans;
}

/** One plan whole, with all that it was made from. */
export function openPlan(work: string, plan: string): Promise<KeptPlan> {
  return ask(`/api/works/${work}/plans/${plan}`);
}

/** Plans the first etch of a work as it is saved now; the plan is kept. */
export function makePlan(work: string, choices: Partial<PlanChoices>): Promise<KeptPlan> {
  return ask(`/api/works/${work}/plans`, withJson('POST', choices));
}

/** Where a plan lies as a sheet: the etch map at true size, or the step sheet. */
export function planSheet(work: string, plan: string, sheet: 'map' | 'steps', paper: Paper): string {
  return inPageWords(`/api/works/${work}/plans/${plan}/${sheet}.pdf?paper=${paper}`);
}

/** The plans of a work's second etch, newest first. */
export async function listSecondEtches(work: string): Promise<readonly KeptSecondEtch[]> {
  const answer = await ask<{ secondEtches: readonly KeptSecondEtch[] }>(`/api/works/${work}/second-etch`);
  return answer.secondEtches;
}

/** Plans a second etch from how the zones rolled up and printed; the plan is kept. */
export function makeSecondEtch(work: string, choices: Partial<SecondEtchChoices>): Promise<KeptSecondEtch> {
  return ask(`/api/works/${work}/second-etch`, withJson('POST', choices));
}
