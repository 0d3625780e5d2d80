import { type Kysely, type Selectable, sql } from 'kysely';
import type { Batch, BatchDraft, BatchKind } from '../../records/batch.ts';
import type { BatchTable } from '../database/recordTables.ts';
import type { Tables } from '../database/tables.ts';
import { archivedShown, type PageQuery, pageOf, readMark } from './pageMark.ts';
import { foldForSearch, searchWords } from './searchText.ts';

export interface BatchQuery extends PageQuery {
  readonly kind: BatchKind | null;
}

export interface BatchPage {
  readonly batches: readonly Batch[];
  readonly next: string | null;
}

export interface BatchRepository {
  add(batch: Batch): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<Batch | null>;
  /** Newest first; null where `after` can't be read. */
  list(query: BatchQuery): Promise<BatchPage | null>;
  /** Puts a batch in place of its version `from`; false, and nothing changed, where it is at another. */
  save(batch: Batch, from: number): Promise<boolean>;
}

function toRow({ id, archived, version, createdAt, changedAt, sample, ...draft }: Batch): BatchTable {
  const words = 'product' in draft ? [draft.product, draft.lot] : [];
  return {
    id,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    archived: archived ? 1 : 0,
    sample: sample ? 1 : 0,
    search_text: foldForSearch([draft.name, draft.kind, draft.note, ...words].join(' ')),
    kind: draft.kind,
    record_json: JSON.stringify(draft),
  };
}

function fromRow(row: Selectable<BatchTable>): Batch {
  return {
    ...(JSON.parse(row.record_json) as BatchDraft),
    id: row.id,
    archived: row.archived === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}

/** The batches' rows of an open database or of a transaction. */
export function batchRepositoryIn(database: Kysely<Tables>): BatchRepository {
  return {
    async add(batch) {
      await database.insertInto('batches').values(toRow(batch)).execute();
    },
    async find(id) {
      const row = await database.selectFrom('batches').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async list({ search, archived, kind, after, limit }) {
      const mark = after === null ? null : readMark(after);
      if (after !== null && mark === null) return null;
      let query = database
        .selectFrom('batches')
        .selectAll()
        .where('archived', 'in', archivedShown(archived))
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit + 1);
      if (kind !== null) query = query.where('kind', '=', kind);
      for (const word of searchWords(search))
        query = query.where(sql<boolean>`instr(search_text, ${word}) > 0`);
      if (mark) {
        query = query.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('created_at', 'id'), '<', tuple(mark.key, mark.id)),
        );
      }
      const cut = pageOf(await query.execute(), limit, (row) => ({ key: row.created_at, id: row.id }));
      return { batches: cut.page.map(fromRow), next: cut.next };
    },
    async save(batch, from) {
      const outcome = await database
        .updateTable('batches')
        .set(toRow(batch))
        .where('id', '=', batch.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
  };
}
