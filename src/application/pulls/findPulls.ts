import { fail, ok, type Result } from '../../foundation/result.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { noSuchWork } from '../works/findWork.ts';
import { type PullEntryParts, pullEntryOf } from './pullEntryOf.ts';
import { pullOfWork } from './pullOfWork.ts';

export type FindPullsParts = PullEntryParts & {
  readonly store: Pick<KeptRecords, 'works' | 'pulls' | 'pullMeasurings'>;
};

/** A work's pulls in use, in order of their numbers; or `not-found`. */
export async function listPulls(
  parts: FindPullsParts,
  workId: string,
): Promise<Result<readonly PullEntry[]>> {
  const { works, pulls } = parts.store;
  if ((await works.find(workId)) === null) return fail(noSuchWork());
  const entries: PullEntry[] = [];
  for (const pull of await pulls.ofWork(workId)) entries.push(await pullEntryOf(parts, parts.store, pull));
  return ok(entries);
}

/** One pull whole, put by or not; or the faults of `pullOfWork`. */
export async function readPull(
  parts: FindPullsParts,
  workId: string,
  pullId: string,
): Promise<Result<PullEntry>> {
  const found = await pullOfWork(parts.store, workId, pullId);
  return found.ok ? ok(await pullEntryOf(parts, parts.store, found.value.pull)) : found;
}
