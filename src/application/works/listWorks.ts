import { ok, type Result } from '../../foundation/result.ts';
import type { WorkSummary } from '../../records/workEntry.ts';
import type { WorkQuery } from '../../store/repositories/workRepository.ts';
import { badMark } from '../badMark.ts';
import type { ReadRunParts } from '../bench/readRun.ts';
import { readGum } from '../bench/readStanding.ts';

export interface WorkList {
  readonly works: readonly WorkSummary[];
  readonly next: string | null;
}

/**
 * A page of works, last changed first, each with whether its stone lies under gum; `body-malformed` where `after` marks
 * no place.
 */
export async function listWorks(parts: ReadRunParts, query: WorkQuery): Promise<Result<WorkList>> {
  const page = await parts.store.works.list(query);
  if (page === null) return badMark();
  const works: WorkSummary[] = [];
  for (const work of page.works) {
    works.push({ ...work, gum: work.archived ? null : await readGum(parts, work.id) });
  }
  return ok({ works, next: page.next });
}
