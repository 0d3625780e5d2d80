import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunState } from '../../records/bench.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import type { Work } from '../../records/work.ts';
import type { Store } from '../../store/openStore.ts';
import { comparedWorks } from '../../studio/papers/comparedWorks.ts';
import type { WorkRecords } from '../../studio/papers/gaps.ts';
import { type ReadRunParts, stateOf } from '../bench/readRun.ts';
import { comparisonEntryOf, type EntryParts } from '../comparisonEntryOf.ts';
import { type ReadSeriesParts, readSeries } from '../pulls/readSeries.ts';
import { noSuchWork } from '../works/findWork.ts';
import { workEntryOf } from '../works/workEntryOf.ts';

export interface WorkRecordParts extends ReadRunParts, ReadSeriesParts, EntryParts {
  readonly store: ReadRunParts['store'] &
    ReadSeriesParts['store'] &
    EntryParts['store'] &
    Pick<Store, 'stones' | 'comparisons'>;
}

/** All that a paper on one work is put together from; or `not-found`. */
export async function readWorkRecords(parts: WorkRecordParts, workId: string): Promise<Result<WorkRecords>> {
  const { store } = parts;
  const found = await store.works.find(workId);
  if (found === null) return fail(noSuchWork());
  const work = await workEntryOf(store, found);
  const { runs, plan } = await readRunsAndPlan(parts, workId);
  const photographs = [...work.photographs, ...work.stone.photographs].map(({ photograph }) => photograph);
  const { comparisons, doubtful } = await comparisonsOf(parts, found, photographs);
  const series = await readSeries(parts, workId);
  if (!series.ok) return series;
  const approvals = await store.series.approvals(workId);
  return ok({ work, plan, runs, comparisons, doubtful, series: series.value, approvals });
}

/** The comparisons made from photographs of a work or its stone, but for those that are another work's. */
async function comparisonsOf(
  parts: WorkRecordParts,
  work: Work,
  photographs: readonly string[],
): Promise<Pick<WorkRecords, 'comparisons' | 'doubtful'>> {
  const { store } = parts;
  const comparisons: ComparisonEntry[] = [];
  const doubtful: WorkRecords['doubtful'][number][] = [];
  for (const one of await store.comparisons.ofPhotographs(photographs)) {
    const { stone, proof } = one.request;
    const hanging = await store.works.withPhotographs([stone.photograph, proof.photograph]);
    const others = hanging.filter(({ id }) => id !== work.id);
    const meant = comparedWorks(one.request, [work, ...others]);
    if (!meant.includes(work)) continue;
    comparisons.push(await comparisonEntryOf(parts, one));
    if (meant.length > 1)
      doubtful.push({
        title: one.request.title,
        others: meant.filter(({ id }) => id !== work.id).map(({ title }) => title),
      });
  }
  return { comparisons, doubtful };
}

/** The runs of a work, oldest first, with the first etch's plan that they followed, else the newest. */
export async function readRunsAndPlan(
  parts: ReadRunParts,
  workId: string,
): Promise<Pick<WorkRecords, 'runs' | 'plan'>> {
  const { store } = parts;
  const runs: RunState[] = [];
  for (const run of (await store.runs.ofWork(workId)).toReversed()) runs.push(await stateOf(parts, run));
  const followed = runs.findLast(({ planId }) => planId !== null)?.planId ?? null;
  const plan =
    followed === null ? await store.plans.newestFirst(workId) : await store.plans.findFirst(workId, followed);
  return { runs, plan };
}
