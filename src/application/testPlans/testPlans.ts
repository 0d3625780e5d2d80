import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { TestPlan, TestPlanDraft } from '../../records/testPlan.ts';
import type { TestPlanEntry } from '../../records/testPlanEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { TestPlanQuery } from '../../store/repositories/testPlanRepository.ts';
import { badMark } from '../badMark.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { type PlanRecords, testPlanEntryOf } from './testPlanEntryOf.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;
interface ReadParts {
  readonly store: PlanRecords & Pick<KeptRecords, 'testPlans'>;
}

export interface TestPlanPage {
  readonly testPlans: readonly TestPlanEntry[];
  readonly next: string | null;
}

/** The failure for a planned test that is not there. */
export function noSuchTestPlan(): Failure {
  return failure('not-found', { what: 'such planned test' });
}

/** A page of planned tests, newest first; `body-malformed` where `after` marks no place. */
export async function listTestPlans(
  { store }: ReadParts,
  query: TestPlanQuery,
): Promise<Result<TestPlanPage>> {
  const listed = await store.testPlans.list(query);
  if (listed === null) return badMark();
  const testPlans: TestPlanEntry[] = [];
  for (const plan of listed.page) testPlans.push(await testPlanEntryOf(store, plan));
  return ok({ testPlans, next: listed.next });
}

/** One planned test, taken off the list or not; or `not-found`. */
export async function readTestPlan({ store }: ReadParts, id: string): Promise<Result<TestPlanEntry>> {
  const plan = await store.testPlans.find(id);
  return plan === null ? fail(noSuchTestPlan()) : ok(await testPlanEntryOf(store, plan));
}

/** Keeps a test as it is planned, half typed too. */
export function createTestPlan(parts: SavingParts, draft: TestPlanDraft): Promise<Saved<TestPlanEntry>> {
  return parts.store.decide((records) => addPlan(parts, records, draft));
}

/** Keeps a copy of a planned test, not yet made into stones, its lots drawn from the next number; or `not-found`. */
export function copyTestPlan(parts: SavingParts, id: string): Promise<Saved<TestPlanEntry>> {
  return parts.store.decide<TestPlanEntry, SaveRefusal<TestPlanEntry>>(async (records) => {
    const kept = await records.testPlans.find(id);
    if (kept === null) return refused(noSuchTestPlan());
    const title = kept.title === '' ? '' : `${kept.title}, again`.slice(0, 120);
    return addPlan(parts, records, { ...kept, title, seed: (kept.seed + 1) % 4_294_967_296 });
  });
}

/**
 * Saves what a person changed about a planned test.
 * @returns `stale-save` with the plan as it is now, `put-by`, `test-plan-made` once stones were made of it, or `not-found`
 */
export function changeTestPlan(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<TestPlanDraft>,
): Promise<Saved<TestPlanEntry>> {
  return saveTestPlan(parts, id, version, async (kept) => {
    if (kept.putBy) return refused(failure('put-by', { what: `The planned test ${kept.title}` }));
    if (kept.testStones.length > 0) return refused(failure('test-plan-made', { what: kept.title }));
    return ok(withChanges<TestPlan>(kept, changes));
  });
}

/** Takes a planned test off the list, or brings it back; `stale-save` or `not-found`. */
export function putTestPlanBy(
  parts: Parts,
  id: string,
  { version, putBy }: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<TestPlanEntry>> {
  return saveTestPlan(parts, id, version, async (kept) => ok({ ...kept, putBy }));
}

async function addPlan(
  { now, newId, sample }: SavingParts,
  records: KeptRecords,
  draft: TestPlanDraft,
): Promise<Saved<TestPlanEntry>> {
  const createdAt = now().toISOString();
  const plan: TestPlan = {
    ...draft,
    testStones: [],
    id: newId(),
    putBy: false,
    version: 1,
    createdAt,
    changedAt: createdAt,
    sample: sample ?? false,
  };
  await records.testPlans.add(plan);
  return ok(await testPlanEntryOf(records, plan));
}

function saveTestPlan(
  { store, now }: Parts,
  id: string,
  version: number,
  change: (kept: TestPlan) => Promise<Saved<TestPlan>>,
): Promise<Saved<TestPlanEntry>> {
  return store.decide<TestPlanEntry, SaveRefusal<TestPlanEntry>>(async (records) => {
    const kept = await records.testPlans.find(id);
    if (kept === null) return refused(noSuchTestPlan());
    if (kept.version !== version)
      return stale(
        `the planned test ${kept.title}`,
        { yours: version, kept: kept.version },
        await testPlanEntryOf(records, kept),
      );
    const changed = await change(kept);
    if (!changed.ok) return refused(changed.error.failure);
    const next: TestPlan = { ...changed.value, version: version + 1, changedAt: now().toISOString() };
    await records.testPlans.save(next, version);
    return ok(await testPlanEntryOf(records, next));
  });
}
