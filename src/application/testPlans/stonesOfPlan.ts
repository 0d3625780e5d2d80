import { type Failure, failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { TestPlan } from '../../records/testPlan.ts';
import type { TestPlanEntry } from '../../records/testPlanEntry.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { TrialWish } from '../../records/trialDesign.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { enterStonesOfTrial } from '../trials/planTrial.ts';
import { type PlanRecords, testPlanEntryOf } from './testPlanEntryOf.ts';
import { noSuchTestPlan } from './testPlans.ts';

export interface PlannedStonesParts extends SavingParts {
  readonly store: SavingParts['store'] & PlanRecords & Pick<KeptRecords, 'testPlans'>;
}

/**
 * Makes the test stones of a planned test, all or none, and notes them in it; a plan is made into stones once.
 * @returns `not-found`, `stale-save`, `put-by`, `test-plan-made`, `test-plan-not-ready` with what stands in the way, or what
 *   `enterStonesOfTrial` refuses
 */
export async function makeStonesOfPlan(
  parts: PlannedStonesParts,
  id: string,
  version: number,
): Promise<Saved<readonly TestStone[]>> {
  const plan = await parts.store.testPlans.find(id);
  if (plan === null) return refused(noSuchTestPlan());
  const entry = await testPlanEntryOf(parts.store, plan);
  if (plan.version !== version) return refused(staleOf(plan, version));
  const fault = notReady(entry);
  if (fault) return refused(fault);
  return enterStonesOfTrial(parts, entry.wish as TrialWish, {
    planId: id,
    kinds: Object.fromEntries(plan.treatments.map(({ name, kind }) => [name.trim().slice(0, 60), kind])),
    ownEtches: plan.ownEtches,
    note: async (records, testStones) => {
      const changedAt = parts.now().toISOString();
      const next = {
        ...plan,
        testStones: testStones.map((stone) => stone.id),
        version: version + 1,
        changedAt,
      };
      return (await records.testPlans.save(next, version)) ? ok(null) : refused(staleOf(plan, version));
    },
  });
}

function notReady({ putBy, testStones, title, troubles, levels }: TestPlanEntry): Failure | null {
  if (putBy) return failure('put-by', { what: `The planned test ${title}` });
  if (testStones.length > 0) return failure('test-plan-made', { what: title });
  const unknown = levels.flatMap(({ state, message }) => (state === 'unknown' && message ? [message] : []));
  const why = [...troubles, ...unknown].join(' ').replace(/\.$/, '');
  return why === '' ? null : failure('test-plan-not-ready', { why }, 'treatments');
}

function staleOf({ title, version: kept }: TestPlan, yours: number): Failure {
  return failure('stale-save', { what: `the planned test ${title}`, yours, kept }, 'version');
}
