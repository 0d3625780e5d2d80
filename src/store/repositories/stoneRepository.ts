import { type Kysely, type Selectable, sql } from 'kysely';
import type { KeptStone, StoneSummary, WorkMention } from '../../records/stoneEntry.ts';
import type { WorkStage } from '../../records/work.ts';
import type { StoneTable } from '../database/recordTables.ts';
import type { Tables } from '../database/tables.ts';
import { type PageQuery, pageOf, putByShown, readMark } from './pageMark.ts';
import { foldForSearch, searchWords, sortKey } from './searchText.ts';

export interface StonePage {
  readonly stones: readonly Omit<StoneSummary, 'gum'>[];
  readonly next: string | null;
}

export interface StoneRepository {
  /** Adds a stone; its photographs must be there. */
  add(stone: KeptStone): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<KeptStone | null>;
  /** By name; null where `after` can't be read. */
  list(query: PageQuery): Promise<StonePage | null>;
  /** Puts a stone in place of its version `from`; false, and nothing changed, where it is at another. */
  save(stone: KeptStone, from: number): Promise<boolean>;
  /** Whether a stone in use, other than `except`, is called that, whatever the case. */
  hasName(name: string, except: string | null): Promise<boolean>;
  /** Whether the invented studio's stones were ever placed here. */
  hasSample(): Promise<boolean>;
}

function toRow({ id, putBy, version, createdAt, changedAt, sample, ...draft }: KeptStone): StoneTable {
  return {
    id,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    put_by: putBy ? 1 : 0,
    sample: sample ? 1 : 0,
    search_text: foldForSearch([draft.name, draft.colour, draft.note].join(' ')),
    name: draft.name,
    name_key: sortKey(draft.name),
    width_mm: draft.widthMm,
    height_mm: draft.heightMm,
    colour: draft.colour,
    record_json: JSON.stringify(draft),
  };
}

function fromRow(row: Selectable<StoneTable>): KeptStone {
  return {
    ...(JSON.parse(row.record_json) as Omit<KeptStone, 'id'>),
    id: row.id,
    putBy: row.put_by === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}

/** The stones' rows of an open database or of a transaction. */
export function stoneRepositoryIn(database: Kysely<Tables>): StoneRepository {
  async function attach({ id, photographs }: KeptStone): Promise<void> {
    await database.deleteFrom('stone_photographs').where('stone_id', '=', id).execute();
    const ids = [...new Set(photographs.map(({ photograph }) => photograph))];
    if (ids.length === 0) return;
    const rows = ids.map((photograph) => ({ stone_id: id, photograph_id: photograph }));
    await database.insertInto('stone_photographs').values(rows).execute();
  }
  return {
    async add(stone) {
      await database.insertInto('stones').values(toRow(stone)).execute();
      await attach(stone);
    },
    async find(id) {
      const row = await database.selectFrom('stones').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async list({ search, putBy, after, limit }) {
      const mark = after === null ? null : readMark(after);
      if (after !== null && mark === null) return null;
      let query = database
        .selectFrom('stones')
        .leftJoin('works', (join) => join.on('works.id', '=', lastWorkOn))
        .select(['stones.id', 'stones.name', 'stones.name_key', 'stones.width_mm', 'stones.height_mm'])
        .select(['stones.colour', 'stones.put_by', 'stones.version', 'stones.changed_at', 'stones.sample'])
        .select(['works.id as work_id', 'works.title', 'works.stage'])
        .where('stones.put_by', 'in', putByShown(putBy))
        .orderBy('stones.name_key')
        .orderBy('stones.id')
        .limit(limit + 1);
      for (const word of searchWords(search)) {
        query = query.where(sql<boolean>`instr(stones.search_text, ${word}) > 0`);
      }
      if (mark) {
        query = query.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('stones.name_key', 'stones.id'), '>', tuple(mark.key, mark.id)),
        );
      }
      const { page, next } = pageOf(await query.execute(), limit, (row) => ({
        key: row.name_key,
        id: row.id,
      }));
      const stones = page.map((row) => ({
        id: row.id,
        name: row.name,
        widthMm: row.width_mm,
        heightMm: row.height_mm,
        colour: row.colour,
        putBy: row.put_by === 1,
        version: row.version,
        changedAt: row.changed_at,
        sample: row.sample === 1,
        work: mention(row),
      }));
      return { stones, next };
    },
    async save(stone, from) {
      const outcome = await database
        .updateTable('stones')
        .set(toRow(stone))
        .where('id', '=', stone.id)
        .where('version', '=', from)
        .executeTakeFirst();
      if (outcome.numUpdatedRows !== 1n) return false;
      await attach(stone);
      return true;
    },
    async hasName(name, except) {
      let query = database.selectFrom('stones').select('id').where('name_key', '=', sortKey(name));
      query = query.where('put_by', '=', 0);
      if (except !== null) query = query.where('id', '!=', except);
      return (await query.limit(1).executeTakeFirst()) !== undefined;
    },
    async hasSample() {
      const row = await database.selectFrom('stones').select('id').where('sample', '=', 1).executeTakeFirst();
      return row !== undefined;
    },
  };
}

/** The id of the work on a stone that was changed last, those put by left out. */
const lastWorkOn = sql<string>`(
  SELECT newest.id FROM works AS newest WHERE newest.stone_id = stones.id AND newest.put_by = 0
  ORDER BY newest.changed_at DESC, newest.id DESC LIMIT 1
)`;

function mention(row: {
  work_id: string | null;
  title: string | null;
  stage: string | null;
}): WorkMention | null {
  if (row.work_id === null) return null;
  return { id: row.work_id, title: row.title!, stage: row.stage as WorkStage };
}
