import type { Kysely, Selectable } from 'kysely';
import type { Deadline, KeptDeadline } from '../../records/dayPlan.ts';
import type { StudioTables } from '../database/studioTables.ts';
import type { Tables } from '../database/tables.ts';

export interface DeadlineRepository {
  /** Null as long as nobody saved one for that work. */
  find(workId: string): Promise<KeptDeadline | null>;
  /** Puts a deadline in place of version `from` (0: of none); false, and nothing changed, where it is at another. */
  save(kept: KeptDeadline & { readonly changedAt: string }, from: number): Promise<boolean>;
  /** Those of works in use; without those that were taken away. */
  list(): Promise<readonly (KeptDeadline & { readonly deadline: Deadline })[]>;
}

function fromRow(row: Selectable<StudioTables['deadlines']>): KeptDeadline {
  return {
    workId: row.work_id,
    deadline: JSON.parse(row.record_json) as Deadline | null,
    version: row.version,
    changedAt: row.changed_at,
  };
}

/** The works' deadlines in an open database or a transaction. */
export function deadlineRepositoryIn(database: Kysely<Tables>): DeadlineRepository {
  return {
    async find(workId) {
      const row = await database
        .selectFrom('deadlines')
        .selectAll()
        .where('work_id', '=', workId)
        .executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async save({ workId, deadline, version, changedAt }, from) {
      const row = { version, changed_at: changedAt, record_json: JSON.stringify(deadline) };
      if (from === 0) {
        await database
          .insertInto('deadlines')
          .values({ work_id: workId, ...row })
          .execute();
        return true;
      }
      const outcome = await database
        .updateTable('deadlines')
        .set(row)
        .where('work_id', '=', workId)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
    async list() {
      const rows = await database
        .selectFrom('deadlines')
        .innerJoin('works', 'works.id', 'deadlines.work_id')
        .selectAll('deadlines')
        .where('works.put_by', '=', 0)
        .orderBy('deadlines.work_id')
        .execute();
      return rows.map(fromRow).flatMap((kept) => {
        const { deadline } = kept;
        return deadline === null ? [] : [{ ...kept, deadline }];
      });
    },
  };
}
