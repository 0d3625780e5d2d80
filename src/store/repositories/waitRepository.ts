import type { Kysely } from 'kysely';
import type { RunSummary } from '../../records/run.ts';
import type { Tables } from '../database/tables.ts';
import { comparisonFromRow, type StoredComparison } from './storedComparison.ts';
import { runFromRow } from './storedRun.ts';

/** What is read of many works at once: how they wait, and what a room's record of its waits stands on. */
export interface WaitRepository {
  /** Ids of the works that have a run, archived ones too. */
  worksWithRuns(): Promise<readonly string[]>;
  /** The newest run of each of these works that has one, by the work's id. */
  newestRuns(workIds: readonly string[]): Promise<ReadonlyMap<string, RunSummary>>;
  /** Measured comparisons that stand on a photograph which is attached to a work with a run, oldest first. */
  measuredPrints(): Promise<readonly MeasuredPrint[]>;
}

export interface MeasuredPrint {
  readonly workId: string;
  readonly comparison: StoredComparison;
}

export function waitRepositoryIn(database: Kysely<Tables>): WaitRepository {
  return {
    async worksWithRuns() {
      const rows = await database
        .selectFrom('runs')
        .select('work_id')
        .distinct()
        .orderBy('work_id')
        .execute();
      return rows.map((row) => row.work_id);
    },
    async newestRuns(workIds) {
      if (workIds.length === 0) return new Map();
      const rows = await database
        .selectFrom('runs')
        .selectAll('runs')
        .select(({ selectFrom }) =>
          selectFrom('run_events')
            .whereRef('run_events.run_id', '=', 'runs.id')
            .select((inner) => inner.fn.max('run_events.sequence').as('last'))
            .as('last'),
        )
        .where('work_id', 'in', workIds)
        .orderBy('started_at')
        .orderBy('id')
        .execute();
      // the last of a work that is set is its newest
      return new Map(rows.map((row) => [row.work_id, runFromRow(row)]));
    },
    async measuredPrints() {
      const pairs = database
        .selectFrom('comparison_photographs')
        .innerJoin(
          'work_photographs',
          'work_photographs.photograph_id',
          'comparison_photographs.photograph_id',
        )
        .where('work_photographs.work_id', 'in', ({ selectFrom }) =>
          selectFrom('runs').select('runs.work_id'),
        )
        .select(['comparison_photographs.comparison_id', 'work_photographs.work_id'])
        .distinct();
      const rows = await database
        .selectFrom('comparisons')
        .innerJoin(pairs.as('pairs'), 'pairs.comparison_id', 'comparisons.id')
        .selectAll('comparisons')
        .select('pairs.work_id')
        .where('comparisons.archived_at', 'is', null)
        .where('comparisons.state', '=', 'measured')
        .orderBy('comparisons.created_at')
        .orderBy('comparisons.id')
        .execute();
      return rows.map((row) => ({ workId: row.work_id, comparison: comparisonFromRow(row) }));
    },
  };
}
