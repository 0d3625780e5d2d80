import type { KeptPlan } from '../../../records/keptPlan.ts';
import { etches } from '../../bench/stagesDone.ts';
import type { ReportInput } from './reportInput.ts';

/** Plans whose first etch was laid in the period, each once for every run that followed it. */
export function plansLaid({ works }: Pick<ReportInput, 'works'>): readonly KeptPlan[] {
  return works.flatMap(({ plan, runs }) =>
    plan === null
      ? []
      : runs
          .filter(
            ({ planId, stages, contacts }) =>
              planId === plan.id &&
              (contacts.length > 0 ||
                stages.some(({ stage, state }) => etches.includes(stage) && state !== 'skipped')),
          )
          .map(() => plan),
  );
}
