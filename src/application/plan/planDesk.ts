import type { Result } from '../../foundation/result.ts';
import type { EtchPlan, PlanRequest } from '../../records/etch.ts';
import { threadModule } from '../threads/runInThread.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';

/** Plans etches off the main thread: a schedule that is hard to find takes up to a second. */
export interface PlanDesk {
  /** @param request one that `judgePlanRequest` found usable. */
  plan(request: PlanRequest): Promise<Result<EtchPlan>>;
  /** Ends all work where it stands. */
  stop(): Promise<void>;
}

const plansAtOnce = 2;

/** At most two plans are worked out at a time, others wait. */
export function createPlanDesk(): PlanDesk {
  const desk = createThreadDesk(plansAtOnce);
  const module = threadModule(import.meta.url, 'planThread');
  return { plan: (request) => desk.run<EtchPlan>(module, request), stop: desk.stop };
}
