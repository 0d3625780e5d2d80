import { type Kysely, sql } from 'kysely';
import type { ComparisonState } from '../../records/comparisonEntry.ts';
import type { Tables } from '../database/tables.ts';
import { foldForSearch } from './searchText.ts';
import {
  type ComparisonMove,
  type ComparisonPage,
  comparisonFromRow,
  comparisonToRow,
  photographsOf,
  type StoredComparison,
} from './storedComparison.ts';

export interface ComparisonRepository {
  /** Adds a comparison with its photographs in one transaction; all photographs must be there. */
  add(comparison: StoredComparison): Promise<void>;
  /** Null where there is none, or it was put by. */
  find(id: string): Promise<StoredComparison | null>;
  /** Newest first, without those of which only patches are read, those whose words hold every word of `search`; null where `after` is not known. */
  list(query: { search: string; after: string | null; limit: number }): Promise<ComparisonPage | null>;
  /** Those that stand on one of these photographs and are measured whole, oldest first. */
  ofPhotographs(photographs: readonly string[]): Promise<readonly StoredComparison[]>;
  /** Moves a comparison out of one of the states `from`; false, and nothing changed, where it is in another. */
  move(id: string, from: readonly ComparisonState[], change: ComparisonMove): Promise<boolean>;
  /** The one that has waited longest; null where none waits. */
  nextWaiting(): Promise<StoredComparison | null>;
  /** Those that say they are being measured: at a start, those whose measuring the program's end cut short. */
  measuring(): Promise<readonly StoredComparison[]>;
  /** Whether the invented studio's comparison was ever placed here, be it put by since. */
  hasSample(): Promise<boolean>;
  /** Takes a comparison off the list for good, keeping its row and files; false where there is none. */
  putBy(id: string, at: string): Promise<boolean>;
}

/** The comparisons' rows of an open database. */
export function comparisonRepositoryIn(database: Kysely<Tables>): ComparisonRepository {
  const kept = () => database.selectFrom('comparisons').where('put_by_at', 'is', null);
  const whole = () => kept().where(sql<boolean>`json_extract(request_json, '$.only') is null`);
  return {
    async add(comparison) {
      await database.transaction().execute(async (transaction) => {
        await transaction.insertInto('comparisons').values(comparisonToRow(comparison)).execute();
        await transaction
          .insertInto('comparison_photographs')
          .values(
            photographsOf(comparison.request).map((id) => ({
              comparison_id: comparison.id,
              photograph_id: id,
            })),
          )
          .execute();
      });
    },
    async find(id) {
      const row = await kept().selectAll().where('id', '=', id).executeTakeFirst();
      return row ? comparisonFromRow(row) : null;
    },
    async list({ search, after, limit }) {
      let query = whole()
        .select(['id', 'title', 'created_at', 'state', 'sample', 'finding'])
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit + 1);
      if (after !== null) {
        // a comparison that is put by still marks its place, so a page can be turned while another person puts it by
        const mark = await database
          .selectFrom('comparisons')
          .select(['created_at', 'id'])
          .where('id', '=', after)
          .executeTakeFirst();
        if (!mark) return null;
        query = query.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('created_at', 'id'), '<', tuple(mark.created_at, mark.id)),
        );
      }
      for (const word of foldForSearch(search).split(' ').filter(Boolean)) {
        query = query.where(sql<boolean>`instr(search_text, ${word}) > 0`);
      }
      const rows = await query.execute();
      const page = rows.slice(0, limit);
      return {
        comparisons: page.map((row) => ({
          id: row.id,
          title: row.title,
          createdAt: row.created_at,
          state: row.state as ComparisonState,
          sample: row.sample === 1,
          finding: row.finding,
        })),
        next: rows.length > limit ? page.at(-1)!.id : null,
      };
    },
    async ofPhotographs(photographs) {
      if (photographs.length === 0) return [];
      const rows = await whole()
        .selectAll()
        .where('id', 'in', (inner) =>
          inner
            .selectFrom('comparison_photographs')
            .select('comparison_id')
            .where('photograph_id', 'in', photographs),
        )
        .orderBy('created_at')
        .orderBy('id')
        .execute();
      return rows.map(comparisonFromRow);
    },
    async move(id, from, change) {
      return database.transaction().execute(async (transaction) => {
        const row = await transaction
          .selectFrom('comparisons')
          .selectAll()
          .where('id', '=', id)
          .where('put_by_at', 'is', null)
          .where('state', 'in', from)
          .executeTakeFirst();
        if (!row) return false;
        const { to, ...changes } = change;
        const moved = { ...comparisonFromRow(row), ...changes, state: to };
        await transaction
          .updateTable('comparisons')
          .set(comparisonToRow(moved))
          .where('id', '=', id)
          .execute();
        return true;
      });
    },
    async nextWaiting() {
      const row = await kept()
        .selectAll()
        .where('state', '=', 'waiting')
        .orderBy('queued_at')
        .orderBy('id')
        .limit(1)
        .executeTakeFirst();
      return row ? comparisonFromRow(row) : null;
    },
    async measuring() {
      const rows = await kept().selectAll().where('state', '=', 'measuring').execute();
      return rows.map(comparisonFromRow);
    },
    async hasSample() {
      const row = await database
        .selectFrom('comparisons')
        .select('id')
        .where('sample', '=', 1)
        .limit(1)
        .executeTakeFirst();
      return row !== undefined;
    },
    async putBy(id, at) {
      const outcome = await database
        .updateTable('comparisons')
        .set({ put_by_at: at })
        .where('id', '=', id)
        .where('put_by_at', 'is', null)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
  };
}
