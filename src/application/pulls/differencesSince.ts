import { ok, type Result } from '../../foundation/result.ts';
import type { Pull, PullDifferences } from '../../records/pull.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { effectiveEvents } from '../../studio/bench/effectiveEvents.ts';
import { type LogBetween, pullDifferences } from '../../studio/proofs/pullDifferences.ts';
import { pullOfWork } from './pullOfWork.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'works' | 'pulls' | 'runs'>;
}

/** More than is ever logged in a run: what a log holds is read whole. */
const wholeLog = 1_000_000;

/** What else changed since the pull before; or the faults of `pullOfWork`. */
export async function differencesSince(
  { store }: Parts,
  workId: string,
  pullId: string,
): Promise<Result<PullDifferences>> {
  const found = await pullOfWork(store, workId, pullId);
  if (!found.ok) return found;
  const { pull } = found.value;
  const before = (await store.pulls.ofWork(workId)).findLast(({ number }) => number < pull.number);
  if (!before) return ok({ since: null, differences: [] });
  const log = await logBetween({ store }, before, pull);
  return ok({ since: before.number, differences: pullDifferences(before, pull, log) });
}

/** A log covers the time between two pulls where a run was begun by the first of them and not left before the second. */
async function logBetween({ store }: Parts, before: Pull, pull: Pull): Promise<LogBetween> {
  if (before.madeAt === null || pull.madeAt === null) return { covered: false, events: [] };
  const [from, to] = [Date.parse(before.madeAt), Date.parse(pull.madeAt)];
  const runs = await store.runs.ofWork(pull.workId);
  const events: LogBetween['events'][number][] = [];
  let covered = false;
  for (const run of runs) {
    if (Date.parse(run.startedAt) > to) continue;
    const { events: all } = effectiveEvents(await store.runs.events(run.id, { after: 0, limit: wholeLog }));
    if (Date.parse(run.startedAt) <= from && all.some(({ at }) => Date.parse(at) >= to)) covered = true;
    events.push(...all.filter(({ at }) => Date.parse(at) >= from && Date.parse(at) <= to));
  }
  return { covered, events };
}
