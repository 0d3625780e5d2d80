import type { Kysely } from 'kysely';
import type { Tables } from '../database/tables.ts';
import { comparisonFromRow, type StoredComparison } from './storedComparison.ts';

/** What a room's record of its waits is read from. */
export interface WaitRepository {
  /** Ids of the works that have a run, archived ones too. */
  worksWithRuns(): Promise<readonly string[]>;
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
