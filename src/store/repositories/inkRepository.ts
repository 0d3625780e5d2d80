import { type Kysely, type Selectable, sql } from 'kysely';
import type { Ink, InkDraft, InkVerdict } from '../../records/ink.ts';
import type { InkTable } from '../database/inkTables.ts';
import type { Tables } from '../database/tables.ts';
import { archivedShown, type PageQuery, pageOf, readMark } from './pageMark.ts';
import { foldForSearch, searchWords } from './searchText.ts';

export interface InkQuery extends PageQuery {
  /** Only mixes that were made for that work. */
  readonly work: string | null;
  readonly verdict: InkVerdict | null;
}

export interface InkPage {
  readonly inks: readonly Ink[];
  readonly next: string | null;
}

export interface InkRepository {
  add(ink: Ink): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<Ink | null>;
  /** Newest first; null where `after` can't be read. */
  list(query: InkQuery): Promise<InkPage | null>;
  /** Puts a mix in place of its version `from`; false, and nothing changed, where it is at another. */
  save(ink: Ink, from: number): Promise<boolean>;
}

function toRow({ id, archived, version, createdAt, changedAt, sample, ...draft }: Ink): InkTable {
  const { name, note, softInk, stiffInk, modifier, verdict, verdictWords } = draft;
  const words = [name, softInk, stiffInk, modifier, verdict ?? '', verdictWords, note];
  return {
    id,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    archived: archived ? 1 : 0,
    sample: sample ? 1 : 0,
    search_text: foldForSearch(words.join(' ')),
    work_id: draft.workId,
    verdict: draft.verdict,
    record_json: JSON.stringify(draft),
  };
}

function fromRow(row: Selectable<InkTable>): Ink {
  return {
    ...(JSON.parse(row.record_json) as InkDraft),
    id: row.id,
    archived: row.archived === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}

/** The mixes' rows of an open database or of a transaction. */
export function inkRepositoryIn(database: Kysely<Tables>): InkRepository {
  return {
    async add(ink) {
      await database.insertInto('inks').values(toRow(ink)).execute();
    },
    async find(id) {
      const row = await database.selectFrom('inks').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async list({ search, archived, work, verdict, after, limit }) {
      const mark = after === null ? null : readMark(after);
      if (after !== null && mark === null) return null;
      let query = database
        .selectFrom('inks')
        .selectAll()
        .where('archived', 'in', archivedShown(archived))
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit + 1);
      if (work !== null) query = query.where('work_id', '=', work);
      if (verdict !== null) query = query.where('verdict', '=', verdict);
      for (const word of searchWords(search))
        query = query.where(sql<boolean>`instr(search_text, ${word}) > 0`);
      if (mark) {
        query = query.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('created_at', 'id'), '<', tuple(mark.key, mark.id)),
        );
      }
      const cut = pageOf(await query.execute(), limit, (row) => ({ key: row.created_at, id: row.id }));
      return { inks: cut.page.map(fromRow), next: cut.next };
    },
    async save(ink, from) {
      const outcome = await database
        .updateTable('inks')
        .set(toRow(ink))
        .where('id', '=', ink.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
  };
}
