import type { Kysely } from 'kysely';
import type { KeptPlan, KeptSecondEtch, PlanSummary } from '../../records/keptPlan.ts';
import type { Tables } from '../database/tables.ts';

export interface PlanRepository {
  addFirst(plan: KeptPlan): Promise<void>;
  addSecond(plan: KeptSecondEtch): Promise<void>;
  /** The plan of a first etch; null where that work has none of that id. */
  findFirst(workId: string, id: string): Promise<KeptPlan | null>;
  /** A work's newest plan of a first etch. */
  newestFirst(workId: string): Promise<KeptPlan | null>;
  /** A work's plans of first etches, newest first. */
  listFirst(workId: string): Promise<readonly PlanSummary[]>;
  /** A work's plans of second etches, newest first. */
  listSecond(workId: string): Promise<readonly KeptSecondEtch[]>;
}

/** How many plans of one work a list shows: more than anyone makes. */
const mostListed = 200;

/** The plans' rows of an open database or of a transaction. Rows are added and never changed. */
export function planRepositoryIn(database: Kysely<Tables>): PlanRepository {
  const newest = (workId: string, line: 'first' | 'second') =>
    database
      .selectFrom('plans')
      .where('work_id', '=', workId)
      .where('line', '=', line)
      .orderBy('created_at', 'desc')
      .orderBy('id', 'desc')
      .limit(mostListed);
  return {
    async addFirst(plan) {
      await database
        .insertInto('plans')
        .values({
          id: plan.id,
          work_id: plan.workId,
          line: 'first',
          created_at: plan.createdAt,
          work_version: plan.workVersion,
          table_id: plan.table.id,
          table_version: plan.table.version,
          tannic_batch_id: plan.tannicBatchId,
          feasible: String(plan.feasible),
          record_json: JSON.stringify(plan),
        })
        .execute();
    },
    async addSecond(plan) {
      await database
        .insertInto('plans')
        .values({
          id: plan.id,
          work_id: plan.workId,
          line: 'second',
          created_at: plan.createdAt,
          work_version: plan.workVersion,
          table_id: plan.table.id,
          table_version: plan.table.version,
          tannic_batch_id: null,
          feasible: '',
          record_json: JSON.stringify(plan),
        })
        .execute();
    },
    async findFirst(workId, id) {
      const row = await newest(workId, 'first').select('record_json').where('id', '=', id).executeTakeFirst();
      return row ? (JSON.parse(row.record_json) as KeptPlan) : null;
    },
    async newestFirst(workId) {
      const row = await newest(workId, 'first').select('record_json').executeTakeFirst();
      return row ? (JSON.parse(row.record_json) as KeptPlan) : null;
    },
    async listFirst(workId) {
      const rows = await newest(workId, 'first')
        .innerJoin('etch_table_issues as tables', (join) =>
          join
            .onRef('tables.table_id', '=', 'plans.table_id')
            .onRef('tables.version', '=', 'plans.table_version'),
        )
        .select(['plans.id', 'plans.created_at', 'plans.work_version', 'plans.feasible'])
        .select(['plans.table_id', 'plans.table_version', 'tables.name as table_name'])
        .execute();
      return rows.map((row) => ({
        id: row.id,
        createdAt: row.created_at,
        workVersion: row.work_version,
        table: { id: row.table_id, version: row.table_version, name: row.table_name },
        feasible: row.feasible === 'unknown' ? 'unknown' : row.feasible === 'true',
      }));
    },
    async listSecond(workId) {
      const rows = await newest(workId, 'second').select('record_json').execute();
      return rows.map((row) => JSON.parse(row.record_json) as KeptSecondEtch);
    },
  };
}
