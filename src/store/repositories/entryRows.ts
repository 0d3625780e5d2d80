import { type Kysely, type Selectable, sql } from 'kysely';
import type { EditedTable } from '../database/recordTables.ts';
import type { Tables } from '../database/tables.ts';
import { type PageQuery, pageOf, putByShown, readMark } from './pageMark.ts';
import { foldForSearch, searchWords } from './searchText.ts';

/** What every entry of a list that people write in carries beside what they wrote. */
interface Entry {
  readonly id: string;
  readonly putBy: boolean;
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}

/** Tables that hold such entries, newest first. */
type EntryTable =
  | 'materials'
  | 'reports'
  | 'foreign_protocols'
  | 'kit'
  | 'batches'
  | 'inks'
  | 'test_stones'
  | 'test_plans';

/** What a list is narrowed to: columns and what they must hold; null or left out does not narrow. */
type Narrowed<Columns> = { readonly [Column in keyof Columns]?: Columns[Column] | null };

export interface EntryPage<Kept> {
  readonly page: readonly Kept[];
  readonly next: string | null;
}

export interface EntryRows<Kept extends Entry, Columns = object> {
  add(entry: Kept): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<Kept | null>;
  /** Newest first; null where `after` can't be read. */
  list(query: PageQuery, narrowed?: Narrowed<Columns>): Promise<EntryPage<Kept> | null>;
  /** Puts an entry in place of its version `from`; false, and nothing changed, where it is at another. */
  save(entry: Kept, from: number): Promise<boolean>;
}

/**
 * The rows of a table that holds entries.
 * @param wordsOf what a search finds an entry by.
 * @param columnsOf what the table's own columns, by which its list is narrowed, hold of an entry.
 */
export function entryRowsIn<Kept extends Entry, Columns extends object = object>(
  tables: Kysely<Tables>,
  table: EntryTable,
  wordsOf: (entry: Kept) => readonly string[],
  columnsOf?: (entry: Kept) => Columns,
): EntryRows<Kept, Columns> {
  // what all of them have is all that is spoken of here
  const database = tables as unknown as Kysely<Record<EntryTable, EditedTable>>;
  const toRow = (entry: Kept): EditedTable => {
    const { id, putBy, version, createdAt, changedAt, sample, ...draft } = entry;
    return {
      id,
      created_at: createdAt,
      changed_at: changedAt,
      version,
      put_by: putBy ? 1 : 0,
      sample: sample ? 1 : 0,
      search_text: foldForSearch(wordsOf(entry).join(' ')),
      ...columnsOf?.(entry),
      record_json: JSON.stringify(draft),
    };
  };
  return {
    async add(entry) {
      await database.insertInto(table).values(toRow(entry)).execute();
    },
    async find(id) {
      const row = await database.selectFrom(table).selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow<Kept>(row) : null;
    },
    async list({ search, putBy, after, limit }, narrowed) {
      const mark = after === null ? null : readMark(after);
      if (after !== null && mark === null) return null;
      let query = database
        .selectFrom(table)
        .selectAll()
        .where('put_by', 'in', putByShown(putBy))
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit + 1);
      for (const [column, value] of Object.entries(narrowed ?? {})) {
        if (value !== null && value !== undefined) query = query.where(sql.ref(column), '=', value);
      }
      for (const word of searchWords(search))
        query = query.where(sql<boolean>`instr(search_text, ${word}) > 0`);
      if (mark) {
        query = query.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('created_at', 'id'), '<', tuple(mark.key, mark.id)),
        );
      }
      const cut = pageOf(await query.execute(), limit, (row) => ({ key: row.created_at, id: row.id }));
      return { page: cut.page.map((row) => fromRow<Kept>(row)), next: cut.next };
    },
    async save(entry, from) {
      const outcome = await database
        .updateTable(table)
        .set(toRow(entry))
        .where('id', '=', entry.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
  };
}

function fromRow<Kept extends Entry>(row: Selectable<EditedTable>): Kept {
  return {
    ...JSON.parse(row.record_json),
    id: row.id,
    putBy: row.put_by === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}
