import type { Change, ComparisonRecord } from '../../records/comparison.ts';
import type { WaitRecord } from '../../records/rack.ts';
import type { Work } from '../../records/work.ts';
import type { Zone } from '../../records/zone.ts';
import type { Store } from '../../store/openStore.ts';
import type { StoredComparison } from '../../store/repositories/storedComparison.ts';
import { type WaitOutcome, waitRecords } from '../../studio/bench/waitRecords.ts';
import { type WaitTold, waitsTold } from '../../studio/bench/waitsTold.ts';
import { comparedWorks } from '../../studio/papers/comparedWorks.ts';
import type { RunFolds } from './runFolds.ts';

export interface WaitRecordParts {
  readonly store: Pick<Store, 'works' | 'waits' | 'resultFiles'>;
  readonly runFolds: RunFolds;
}

/** A measured print of a work, and when it was there, ms. */
interface Print {
  readonly at: number;
  readonly comparison: StoredComparison;
}

/**
 * This room's own record of the waits: each wait of every work's runs with the newest measured print that followed,
 * before the same wait came again. A print is the work's to which its photographs are attached; of several works, the
 * one that `comparedWorks` names. Where that can't tell them apart it counts for none: it would tell of a wait twice.
 */
export async function readWaitRecords(parts: WaitRecordParts): Promise<readonly WaitRecord[]> {
  const prints = await printsByWork(parts);
  const outcomes: WaitOutcome[] = [];
  for (const [workId, waits] of await allWaits(parts)) {
    const printed = await printsOf(parts, workId, prints.get(workId) ?? []);
    for (const wait of waits) outcomes.push(await outcomeOf(parts, wait, waits, printed));
  }
  return waitRecords(outcomes);
}

/** The measured prints of every work, by the work's id. */
async function printsByWork({ store }: WaitRecordParts): Promise<ReadonlyMap<string, StoredComparison[]>> {
  const hanging = new Map<string, { readonly comparison: StoredComparison; readonly workIds: string[] }>();
  for (const { workId, comparison } of await store.waits.measuredPrints()) {
    const known = hanging.get(comparison.id);
    if (known) known.workIds.push(workId);
    else hanging.set(comparison.id, { comparison, workIds: [workId] });
  }
  const prints = new Map<string, StoredComparison[]>();
  for (const { comparison, workIds } of hanging.values()) {
    const meant = workIds.length === 1 ? workIds : await meantWorks(store, comparison);
    if (meant.length !== 1) continue;
    const [workId] = meant as [string];
    prints.set(workId, [...(prints.get(workId) ?? []), comparison]);
  }
  return prints;
}

async function meantWorks(
  store: WaitRecordParts['store'],
  { request }: StoredComparison,
): Promise<readonly string[]> {
  const { stone, proof } = request;
  const works = await store.works.withPhotographs([stone.photograph, proof.photograph]);
  return comparedWorks(request, works).map(({ id }) => id);
}

/** The waits of every work's runs, by the work's id. */
async function allWaits({
  store,
  runFolds,
}: WaitRecordParts): Promise<ReadonlyMap<string, readonly WaitTold[]>> {
  const waits = new Map<string, WaitTold[]>();
  for (const run of await store.waits.allRuns()) {
    if (run.events === 0) continue;
    const { fold, route } = await runFolds.told(run);
    const told = waits.get(run.workId) ?? [];
    told.push(...waitsTold(fold.stages, route));
    waits.set(run.workId, told);
  }
  return waits;
}

async function printsOf(
  { store }: WaitRecordParts,
  workId: string,
  comparisons: readonly StoredComparison[],
): Promise<readonly Print[]> {
  if (comparisons.length === 0) return [];
  const work = await store.works.find(workId);
  if (work === null) throw new Error(`the work ${workId} of a run is gone, which the database forbids`);
  return comparisons.map((comparison) => ({ at: momentOf(work, comparison), comparison }));
}

async function outcomeOf(
  { store }: WaitRecordParts,
  wait: WaitTold,
  all: readonly WaitTold[],
  prints: readonly Print[],
): Promise<WaitOutcome> {
  const again = all.filter((one) => one.wait === wait.wait && one.endedMs > wait.endedMs);
  const until = Math.min(...again.map(({ endedMs }) => endedMs));
  const followed = prints.filter(({ at }) => at >= wait.endedMs && at < until);
  const newest = followed.toSorted((a, b) => a.at - b.at).at(-1);
  const key = newest?.comparison.resultKey ?? null;
  const record = key === null ? null : await store.resultFiles.record(key);
  const zones = record && newest ? drawnChanges(record, newest.comparison.request.zones) : [];
  return { ...wait, zones: zones.length > 0 ? zones : null };
}

/** What became of the zones that were drawn and meant to print. */
function drawnChanges(record: ComparisonRecord, zones: readonly Zone[]): readonly Change[] {
  const meant = new Set(
    zones.filter(({ intention }) => (intention ?? 'drawn') === 'drawn').map(({ id }) => id),
  );
  const bare = record.parameters.scum.drawnAtMost;
  return record.zones
    .filter(({ id, drawn, printed }) => meant.has(id) && printed !== null && (drawn?.coverage ?? 0) > bare)
    .map(({ change }) => change);
}

/** When a print was photographed, where the work says so; else when it was compared. */
function momentOf(work: Work, { request, createdAt }: StoredComparison): number {
  const attached = work.photographs.find(({ photograph }) => photograph === request.proof.photograph);
  return Date.parse(attached?.takenAt ?? createdAt);
}
