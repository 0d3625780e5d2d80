import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { noSuchWork } from '../works/findWork.ts';

/** A work's runs, newest first; or `not-found`. */
export async function listRuns(
  { store }: { readonly store: Pick<KeptRecords, 'works' | 'runs'> },
  workId: string,
): Promise<Result<readonly RunSummary[]>> {
  if ((await store.works.find(workId)) === null) return fail(noSuchWork());
  return ok(await store.runs.ofWork(workId));
}
