import { fail, ok, type Result } from '../../foundation/result.ts';
import type { BatchEntry } from '../../records/batch.ts';
import type { AspectChange, RunState } from '../../records/bench.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { RunSummary } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import type { Zone } from '../../records/zone.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { type Aspect, aspectChanges } from '../../studio/bench/aspectChanges.ts';
import { type PickedInk, pickAspects } from '../../studio/bench/pickAspects.ts';
import { planAspects, secondEtchAspects } from '../../studio/bench/planAspects.ts';
import { runAspects } from '../../studio/bench/runAspects.ts';
import { workAspects } from '../../studio/bench/workAspects.ts';
import { batchEntryOf } from '../batches/batchEntryOf.ts';
import { noSuchWork } from '../works/findWork.ts';
import { noSuchRun } from './logging.ts';
import { type ReadRunParts, stateOf } from './readRun.ts';

export interface WhatChangedParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<KeptRecords, 'stones' | 'batches' | 'inks' | 'kit'>;
}

type Found = Result<readonly Aspect[]>;

/** What changed up to a run, since an earlier run or work; works count by their newest run. Or `not-found`. */
export async function changesOfRuns(
  parts: WhatChangedParts,
  earlierId: string,
  laterId: string,
): Promise<Result<readonly AspectChange[]>> {
  const run = await parts.store.runs.find(laterId);
  return changes(parts, earlierId, run === null ? fail(noSuchRun()) : ok(await aspectsOfRun(parts, run)));
}

/** What changed up to a work, by its newest run, since an earlier run or work; or `not-found`. */
export async function changesOfWorks(
  parts: WhatChangedParts,
  earlierId: string,
  laterId: string,
): Promise<Result<readonly AspectChange[]>> {
  return changes(parts, earlierId, await aspectsOfWork(parts, laterId));
}

async function changes(
  parts: WhatChangedParts,
  earlierId: string,
  later: Found,
): Promise<Result<readonly AspectChange[]>> {
  if (!later.ok) return later;
  const run = await parts.store.runs.find(earlierId);
  const earlier = run === null ? await aspectsOfWork(parts, earlierId) : ok(await aspectsOfRun(parts, run));
  return earlier.ok ? ok(aspectChanges(earlier.value, later.value)) : earlier;
}

async function aspectsOfWork(parts: WhatChangedParts, id: string): Promise<Found> {
  const [run] = await parts.store.runs.ofWork(id);
  if (run) return ok(await aspectsOfRun(parts, run));
  const { works, stones } = parts.store;
  const work = await works.find(id);
  if (work === null) return fail(noSuchWork());
  const stone = (await stones.find(work.stoneId))!;
  return ok(workAspects({ work, stone, zones: work.zones, at: parts.now().toISOString() }));
}

async function aspectsOfRun(parts: WhatChangedParts, run: RunSummary): Promise<readonly Aspect[]> {
  const { works, stones, plans } = parts.store;
  const state = await stateOf(parts, run);
  const work = (await works.find(run.workId))!;
  const stone = (await stones.find(work.stoneId))!;
  const plan = run.planId === null ? null : await plans.findFirst(run.workId, run.planId);
  return [
    ...workAspects({ work, stone, zones: zonesThen(run, work, plan), at: run.startedAt }),
    ...planAspects(plan),
    ...secondEtchAspects(state, await plans.listSecond(run.workId)),
    ...runAspects(state),
    ...pickAspects(state, await batchesThen(parts, state, plan), await inkThen(parts, state)),
  ];
}

/** The drawing as the plan had it; without a plan it is known only while nobody has changed the work since. */
function zonesThen(run: RunSummary, work: Work, plan: KeptPlan | null): readonly Zone[] | null {
  if (plan !== null) return plan.request.zones;
  return run.workVersion === work.version ? work.zones : null;
}

async function batchesThen(
  { store }: WhatChangedParts,
  { picked, startedAt }: RunState,
  plan: KeptPlan | null,
): Promise<readonly BatchEntry[]> {
  const ids = [plan?.tannicBatchId, ...picked.filter(({ tool }) => tool === 'batch').map(({ id }) => id)];
  const found: BatchEntry[] = [];
  for (const id of new Set(ids)) {
    const batch = id ? await store.batches.find(id) : null;
    if (batch) found.push(batchEntryOf(batch, new Date(startedAt)));
  }
  return found;
}

/** What the picked ink is made of: a mix, or an ink of the kit. */
async function inkThen({ store }: WhatChangedParts, { picked }: RunState): Promise<PickedInk | null> {
  const id = picked.findLast(({ tool }) => tool === 'ink')?.id ?? null;
  if (id === null) return null;
  const mix = await store.inks.find(id);
  if (mix !== null) return mix;
  const kept = await store.kit.find(id);
  return kept?.tool === 'ink' ? kept : null;
}
