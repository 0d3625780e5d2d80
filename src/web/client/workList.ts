import type { WorkStage } from '../../records/work.ts';
import type { WorkSummary } from '../../records/workEntry.ts';
import { ask } from './ask.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const worksKey = ['works'] as const;

/** One page of the works, last changed first; `next` asks for the page after it, null at the end. */
export interface WorkPage {
  readonly works: readonly WorkSummary[];
  readonly next: string | null;
}

/** One page of the works at a stage (null: at any) on a stone (none given: on any), after the place `after`. */
export function listWorks(
  query: ListQuery & { readonly stage: WorkStage | null; readonly stone?: string | null },
  after: string | null,
  signal?: AbortSignal,
  limit = 30,
): Promise<WorkPage> {
  const { stage, stone = null } = query;
  return ask(
    pageAddress('/api/works', query, after, { stage, stone, limit: String(limit) }),
    signal ? { signal } : {},
  );
}
