import type { Kysely } from 'kysely';
import type { StudioDraft, StudioSettings } from '../../records/studio.ts';
import type { Tables } from '../database/tables.ts';

export interface StudioRepository {
  /** Null as long as nobody saved any. */
  find(): Promise<StudioSettings | null>;
  /** Puts settings in place of version `from` (0: of none); false, and nothing changed, where it is at another. */
  save(settings: StudioSettings & { readonly changedAt: string }, from: number): Promise<boolean>;
}

/** The studio's settings in an open database or a transaction. */
export function studioRepositoryIn(database: Kysely<Tables>): StudioRepository {
  return {
    async find() {
      const row = await database.selectFrom('studio_settings').selectAll().executeTakeFirst();
      if (!row) return null;
      const draft = JSON.parse(row.record_json) as StudioDraft;
      return { ...draft, version: row.version, changedAt: row.changed_at };
    },
    async save({ version, changedAt, ...draft }, from) {
      const row = { version, changed_at: changedAt, record_json: JSON.stringify(draft) };
      if (from === 0) {
        await database
          .insertInto('studio_settings')
          .values({ one: 1, ...row })
          .execute();
        return true;
      }
      const outcome = await database
        .updateTable('studio_settings')
        .set(row)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
  };
}
