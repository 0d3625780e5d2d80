import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchPlan, PlanRequest } from '../../records/etch.ts';
import type { KeptPlan, PlanChoices } from '../../records/keptPlan.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { Work } from '../../records/work.ts';
import type { Store } from '../../store/openStore.ts';
import { etchRounds } from '../../studio/trials/bench/etchRounds.ts';
import type { PlanDesk } from '../plan/planDesk.ts';
import { judgePlanRequest } from '../plan/planFromInput.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { judgeWork } from '../works/judgeWork.ts';
import { type BenchRequest, benchRequestOf } from './benchRequest.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';

export interface BenchParts extends SavingParts {
  readonly store: Store;
  readonly planDesk: Pick<PlanDesk, 'plan'>;
}

/** A test stone ready for the bench. */
export interface AtBench {
  readonly testStone: TestStone;
  readonly plan: KeptPlan;
}

/**
 * Makes a test stone ready for the bench: a work on a stone, whose zones are what is etched as one, and a plan that the hands can
 * keep, in rounds where all at once can't be. Asked again, it is planned anew on the work that it has.
 * @param stoneId the stone that it is drawn on
 * @param choices.freshGrain somebody says that what the stone carried is over
 * @returns `not-found`, `stale-save`, `put-by`, `test-stone-at-bench` where it has a work of another kind, `stone-in-use` while
 *   the stone carries another, or the faults of
 *   `benchRequestOf`, `judgeWork` and `judgePlanRequest`
 */
export async function putAtBench(
  parts: BenchParts,
  id: string,
  version: number,
  stoneId: string,
  { freshGrain, ...choices }: PlanChoices & { readonly freshGrain: boolean },
): Promise<Saved<AtBench>> {
  const { store, now, newId, sample } = parts;
  const kept = await store.testStones.find(id);
  if (kept === null) return refused(noSuchTestStone());
  if (kept.version !== version) return refused(staleStone(kept, version));
  if (kept.putBy) return refused(failure('put-by', { what: `The test stone ${kept.name}` }));
  const on = await store.stones.find(stoneId);
  if (on === null) return refused(failure('reference-unknown', { what: 'stone', id: stoneId }, 'stoneId'));
  const asked = await benchRequestOf(store, kept, on, choices);
  if (!asked.ok) return refused(asked.error);
  const there = await workOf(store, kept, asked.value);
  if (!there.ok) return refused(there.error);
  const [carried] = there.value || freshGrain ? [] : await liveWorks(store, stoneId);
  if (carried) return refused(failure('stone-in-use', { name: on.name, work: carried.title }, 'stoneId'));
  const at = now().toISOString();
  const work = there.value ?? { ...newWork(kept, stoneId, asked.value), id: newId(), createdAt: at };
  const whole: Work = there.value ?? {
    ...work,
    putBy: false,
    version: 1,
    changedAt: at,
    sample: sample ?? false,
  };
  const fault = there.value ? null : await judgeWork(store, whole);
  if (fault) return refused(fault);
  const planned = await planInRounds(parts, asked.value);
  if (!planned.ok) return refused(planned.error);
  const { request, plan } = planned.value;
  const keptPlan: KeptPlan = {
    id: newId(),
    workId: whole.id,
    createdAt: at,
    workVersion: whole.version,
    table: { id: request.table.id, version: request.table.version, name: request.table.name },
    feasible: plan.schedule.feasible,
    tannicBatchId: choices.tannicBatchId,
    request,
    plan,
  };
  return store.decide(async (records) => {
    const next: TestStone = { ...kept, workId: whole.id, stoneId, version: version + 1, changedAt: at };
    if (!(await records.testStones.find(id).then((now) => now?.version === version)))
      return refused(staleStone((await records.testStones.find(id)) ?? kept, version));
    if (!there.value) await records.works.add(whole);
    await records.plans.addFirst(keptPlan);
    await records.testStones.save(next, version);
    return ok({ testStone: next, plan: keptPlan });
  });
}

/** Works that a stone still carries: what was grained away is none. */
async function liveWorks({ works }: Pick<Store, 'works'>, stoneId: string): Promise<readonly Work[]> {
  return (await works.onStone(stoneId)).filter(({ stage }) => stage !== 'regrained');
}

/** The work that it has already; null where it has none; `test-stone-at-bench` where that one's zones are others. */
async function workOf(
  store: Pick<Store, 'works'>,
  { workId, name }: TestStone,
  { request }: BenchRequest,
): Promise<Result<Work | null>> {
  const work = workId === null ? null : await store.works.find(workId);
  if (work === null) return ok(null);
  const ids = new Set(work.zones.map(({ id }) => id));
  if (request.zones.every(({ id }) => ids.has(id))) return ok(work);
  return fail(failure('test-stone-at-bench', { what: name }, 'workId'));
}

function newWork(
  { name, sizeMm, note }: TestStone,
  stoneId: string,
  { request, offsetMm }: BenchRequest,
): Omit<Work, 'id' | 'putBy' | 'version' | 'createdAt' | 'changedAt' | 'sample'> {
  return {
    title: name,
    stoneId,
    head: 'top',
    stage: 'grained',
    origin: { kind: 'new' },
    rectangle: { offsetMm, sizeMm },
    zones: request.zones.map(({ set: _, split: __, tone: ___, ...zone }) => ({ ...zone, tone: null })),
    photographs: [],
    note,
  };
}

/** The first way of parting it into rounds that can be kept; where none can, all at once with what stands in its way. */
async function planInRounds(
  { planDesk }: BenchParts,
  { request, places }: BenchRequest,
): Promise<Result<{ readonly request: PlanRequest; readonly plan: EtchPlan }>> {
  const fault = judgePlanRequest(request);
  if (fault) return fail(fault);
  let first: { readonly request: PlanRequest; readonly plan: EtchPlan } | null = null;
  for (const rounds of etchRounds(places)) {
    const parted = rounds.length > 1 ? { ...request, rounds } : request;
    const plan = await planDesk.plan(parted);
    if (!plan.ok) return plan;
    const made = { request: parted, plan: plan.value };
    if (plan.value.schedule.feasible === true) return ok(made);
    first ??= made;
  }
  return ok(first!);
}

function staleStone({ name, version: kept }: TestStone, yours: number) {
  return failure('stale-save', { what: `the test stone ${name}`, yours, kept }, 'version');
}
