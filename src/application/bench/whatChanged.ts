import { fail, ok, type Result } from '../../foundation/result.ts';
import type { AspectChange } from '../../records/bench.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { type Aspect, aspectChanges } from '../../studio/bench/aspectChanges.ts';
import { runAspects, workAspects } from '../../studio/bench/runAspects.ts';
import { noSuchWork } from '../works/findWork.ts';
import { type ReadRunParts, readRun } from './readRun.ts';

export interface WhatChangedParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<KeptRecords, 'stones'>;
}

/** What changed from an earlier run to a later one, their works' stones and drawings too; or `not-found`. */
export async function changesOfRuns(
  parts: WhatChangedParts,
  earlierId: string,
  laterId: string,
): Promise<Result<readonly AspectChange[]>> {
  const earlier = await aspectsOfRun(parts, earlierId);
  if (!earlier.ok) return earlier;
  const later = await aspectsOfRun(parts, laterId);
  return later.ok ? ok(aspectChanges(earlier.value, later.value)) : later;
}

/** What changed from an earlier work to a later one, with the newest run of each; or `not-found`. */
export async function changesOfWorks(
  parts: WhatChangedParts,
  earlierId: string,
  laterId: string,
): Promise<Result<readonly AspectChange[]>> {
  const earlier = await aspectsOfWork(parts, earlierId);
  if (!earlier.ok) return earlier;
  const later = await aspectsOfWork(parts, laterId);
  return later.ok ? ok(aspectChanges(earlier.value, later.value)) : later;
}

async function aspectsOfWork(parts: WhatChangedParts, id: string): Promise<Result<readonly Aspect[]>> {
  const [run] = await parts.store.runs.ofWork(id);
  if (run) return aspectsOfRun(parts, run.id);
  const work = await parts.store.works.find(id);
  if (work === null) return fail(noSuchWork());
  return ok(workAspects(work, (await parts.store.stones.find(work.stoneId))!));
}

async function aspectsOfRun(parts: WhatChangedParts, id: string): Promise<Result<readonly Aspect[]>> {
  const state = await readRun(parts, id);
  if (!state.ok) return state;
  const { works, stones, plans } = parts.store;
  const { workId, planId } = state.value;
  const work = (await works.find(workId))!;
  const stone = (await stones.find(work.stoneId))!;
  const plan = planId === null ? null : await plans.findFirst(workId, planId);
  return ok([...workAspects(work, stone), ...runAspects(state.value, plan)]);
}
