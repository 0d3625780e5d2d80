import type { Kysely } from 'kysely';
import type { Failure } from '../../foundation/failure.ts';
import type { ComparisonState } from '../../records/comparisonEntry.ts';
import type { PullMeasuringTable } from '../database/pullTables.ts';
import type { Tables } from '../database/tables.ts';

/** The reading of one photograph of a pull, as it is kept. */
export interface StoredMeasuring {
  readonly pullId: string;
  readonly photograph: string;
  readonly state: ComparisonState;
  readonly resultKey: string | null;
  readonly failure: Failure | null;
  readonly interruptions: number;
}

/** A change of state, with what it leaves. */
export type MeasuringMove = { readonly to: ComparisonState } & Partial<
  Pick<StoredMeasuring, 'resultKey' | 'failure' | 'interruptions'>
>;

/** A measured photograph with the pull that it shows. */
export type MeasuredPhotograph = Pick<StoredMeasuring, 'pullId' | 'photograph'> & {
  readonly resultKey: string;
};

export interface PullMeasuringRepository {
  /** Names the photographs of a pull: new ones wait from now on, those not named any more are put aside. */
  attach(pullId: string, photographs: readonly string[], at: string): Promise<void>;
  /** Puts those of a pull that are not being measured back into the queue. */
  queueAgain(pullId: string, at: string): Promise<void>;
  /** Those of a pull, put aside ones left out. */
  ofPull(pullId: string): Promise<readonly StoredMeasuring[]>;
  move(
    pullId: string,
    photograph: string,
    from: readonly ComparisonState[],
    change: MeasuringMove,
  ): Promise<boolean>;
  /** The one that has waited longest; null where none waits. */
  nextWaiting(): Promise<StoredMeasuring | null>;
  /** Those that say they are being measured. */
  measuring(): Promise<readonly StoredMeasuring[]>;
  /** The newest pulls of the whole studio with more than one measured photograph, newest first. */
  repeated(limit: number): Promise<readonly MeasuredPhotograph[]>;
}

/** The readings' rows of an open database or of a transaction. */
export function pullMeasuringRepositoryIn(database: Kysely<Tables>): PullMeasuringRepository {
  const kept = () => database.selectFrom('pull_measurings').selectAll().where('attached', '=', 1);
  const fresh = (at: string) =>
    ({ state: 'waiting', queued_at: at, failure_json: null, interruptions: 0, attached: 1 }) as const;
  return {
    async attach(pullId, photographs, at) {
      const before = await database
        .selectFrom('pull_measurings')
        .selectAll()
        .where('pull_id', '=', pullId)
        .execute();
      const known = new Set(before.map(({ photograph_id }) => photograph_id));
      const added = photographs.filter((id) => !known.has(id));
      if (added.length > 0) {
        const rows = added.map((id) => ({
          pull_id: pullId,
          photograph_id: id,
          result_key: null,
          ...fresh(at),
        }));
        await database.insertInto('pull_measurings').values(rows).execute();
      }
      for (const { photograph_id, attached } of before) {
        const named = photographs.includes(photograph_id) ? 1 : 0;
        if (named === attached) continue;
        await database
          .updateTable('pull_measurings')
          .set(named ? fresh(at) : { attached: 0 })
          .where('pull_id', '=', pullId)
          .where('photograph_id', '=', photograph_id)
          .execute();
      }
    },
    async queueAgain(pullId, at) {
      await database
        .updateTable('pull_measurings')
        .set(fresh(at))
        .where('pull_id', '=', pullId)
        .where('attached', '=', 1)
        .where('state', '!=', 'measuring')
        .execute();
    },
    async ofPull(pullId) {
      return (await kept().where('pull_id', '=', pullId).execute()).map(fromRow);
    },
    async move(pullId, photograph, from, { to, resultKey, failure, interruptions }) {
      const outcome = await database
        .updateTable('pull_measurings')
        .set({
          state: to,
          ...(resultKey !== undefined && { result_key: resultKey }),
          ...(failure !== undefined && { failure_json: failure && JSON.stringify(failure) }),
          ...(interruptions !== undefined && { interruptions }),
        })
        .where('pull_id', '=', pullId)
        .where('photograph_id', '=', photograph)
        .where('state', 'in', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
    async nextWaiting() {
      const row = await kept()
        .where('state', '=', 'waiting')
        .orderBy('queued_at')
        .orderBy('pull_id')
        .limit(1)
        .executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async measuring() {
      return (await kept().where('state', '=', 'measuring').execute()).map(fromRow);
    },
    async repeated(limit) {
      const pulls = database
        .selectFrom('pull_measurings as one')
        .innerJoin('pulls', 'pulls.id', 'one.pull_id')
        .select('pulls.id')
        .where('one.attached', '=', 1)
        .where('one.state', '=', 'measured')
        .where('pulls.put_by', '=', 0)
        .groupBy('pulls.id')
        .having(({ fn }) => fn.countAll(), '>', 1)
        .orderBy('pulls.created_at', 'desc')
        .orderBy('pulls.id', 'desc')
        .limit(limit);
      const ids = (await pulls.execute()).map(({ id }) => id);
      if (ids.length === 0) return [];
      const rows = await kept().where('pull_id', 'in', ids).where('state', '=', 'measured').execute();
      return ids.flatMap((id) =>
        rows
          .filter((row) => row.pull_id === id && row.result_key !== null)
          .map((row) => ({ pullId: id, photograph: row.photograph_id, resultKey: row.result_key! })),
      );
    },
  };
}

function fromRow(row: PullMeasuringTable): StoredMeasuring {
  return {
    pullId: row.pull_id,
    photograph: row.photograph_id,
    state: row.state as ComparisonState,
    resultKey: row.result_key,
    failure: row.failure_json === null ? null : (JSON.parse(row.failure_json) as Failure),
    interruptions: row.interruptions,
  };
}
