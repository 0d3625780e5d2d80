import type { Kysely } from 'kysely';
import type { Tables } from '../database/tables.ts';

/** What a run's log amounted to, as text. */
export interface StoredFold {
  /** How many events it was worked out from. */
  readonly events: number;
  /** By which program it was worked out. */
  readonly version: string;
  /** SHA-256 over all else, so that damage shows. */
  readonly seal: string;
  readonly json: string;
}

/** A cache beside the logs: whatever is wrong with a row, the log says what is right. */
export interface FoldRepository {
  find(runId: string): Promise<StoredFold | null>;
  /** Puts it in place of what was kept for that run. */
  keep(runId: string, fold: StoredFold): Promise<void>;
}

/** The kept folds of an open database or of a transaction. */
export function foldRepositoryIn(database: Kysely<Tables>): FoldRepository {
  return {
    async find(runId) {
      const row = await database
        .selectFrom('run_folds')
        .selectAll()
        .where('run_id', '=', runId)
        .executeTakeFirst();
      return row ? { events: row.events, version: row.version, seal: row.seal, json: row.fold_json } : null;
    },
    async keep(runId, { events, version, seal, json }) {
      const row = { events, version, seal, fold_json: json };
      await database
        .insertInto('run_folds')
        .values({ run_id: runId, ...row })
        .onConflict((conflict) => conflict.column('run_id').doUpdateSet(row))
        .execute();
    },
  };
}
