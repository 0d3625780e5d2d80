import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunInput, RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { SavingParts } from '../saving.ts';

/**
 * Begins a run of a work beside the plan that it follows; asked again under the same client id, gives the same run.
 * @returns `reference-unknown` with the field that names nothing, or `put-by`
 */
export function startRun(
  { store, now, newId }: SavingParts,
  { workId, planId, clientId }: RunInput,
): Promise<Result<RunSummary>> {
  return store.decide(async (records) => {
    const begun = clientId === null ? null : await records.runs.begunUnder(clientId);
    if (begun) return ok(begun);
    const work = await records.works.find(workId);
    if (work === null) return fail(failure('reference-unknown', { what: 'work', id: workId }, 'workId'));
    if (work.putBy) return fail(failure('put-by', { what: `The work ${work.title}` }));
    const plan = await planToFollow(records, workId, planId);
    if (!plan.ok) return plan;
    const startedAt = now().toISOString();
    const run = { id: newId(), workId, planId: plan.value, workVersion: work.version, startedAt };
    await records.runs.add(run, clientId, work.stage);
    return ok({ ...run, events: 0 });
  });
}

async function planToFollow(
  { plans }: Pick<KeptRecords, 'plans'>,
  workId: string,
  planId: string | null,
): Promise<Result<string | null>> {
  if (planId === null) return ok((await plans.newestFirst(workId))?.id ?? null);
  const plan = await plans.findFirst(workId, planId);
  if (plan === null) return fail(failure('reference-unknown', { what: 'plan', id: planId }, 'planId'));
  return ok(plan.id);
}
