import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { KeptPlan, PlanSummary } from '../../records/keptPlan.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { noSuchWork } from '../works/findWork.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'works' | 'plans'>;
}

/** The plans of a work's first etch, newest first; or `not-found`. */
export async function listPlans({ store }: Parts, workId: string): Promise<Result<readonly PlanSummary[]>> {
  if ((await store.works.find(workId)) === null) return fail(noSuchWork());
  return ok(await store.plans.listFirst(workId));
}

/** One plan whole, with all that it was made from; `not-found` where the work has none of that id. */
export async function readPlan({ store }: Parts, workId: string, id: string): Promise<Result<KeptPlan>> {
  const plan = await store.plans.findFirst(workId, id);
  return plan === null ? fail(failure('not-found', { what: 'such plan' })) : ok(plan);
}
