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
  const inUse = page.works.filter(({ putBy }) => !putBy).map(({ id }) => id);
  const gum = await readGum(parts, inUse);
  const works = page.works.map((work) => ({ ...work, gum: gum.get(work.id) ?? null }));
  return ok({ works, next: page.next });
}
