import { type Kysely, sql } from 'kysely';
import type { Work, WorkStage } from '../../records/work.ts';
import type { WorkSummary } from '../../records/workEntry.ts';
import type { Tables } from '../database/tables.ts';
import { type PageQuery, pageOf, putByShown, readMark } from './pageMark.ts';
import { searchWords } from './searchText.ts';
import { mediaOf, workFromRow, workToRow } from './storedWork.ts';

export interface WorkQuery extends PageQuery {
  readonly stone: string | null;
  readonly stage: WorkStage | null;
}

export interface WorkPage {
  readonly works: readonly Omit<WorkSummary, 'gum'>[];
  readonly next: string | null;
}

export interface WorkRepository {
  /** Adds a work; its stone and photographs must be there. */
  add(work: Work): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<Work | null>;
  /** Last changed first; the search also goes through the words of the stone. Null where `after` can't be read. */
  list(query: WorkQuery): Promise<WorkPage | null>;
  /** Puts a work in place of its version `from`; false, and nothing changed, where it is at another. */
  save(work: Work, from: number): Promise<boolean>;
  /** The works in use on a stone, whole, last changed first; at most 50 unless `limit` is given. */
  onStone(stoneId: string, limit?: number): Promise<readonly Work[]>;
  /** Works to which any of some photographs hangs, put by or not, those entered first at the front. */
  withPhotographs(photographs: readonly string[]): Promise<readonly Work[]>;
}

/** The works' rows of an open database or of a transaction. */
export function workRepositoryIn(database: Kysely<Tables>): WorkRepository {
  async function attach(work: Work): Promise<void> {
    await database.deleteFrom('work_photographs').where('work_id', '=', work.id).execute();
    await database.deleteFrom('work_media').where('work_id', '=', work.id).execute();
    const ids = [...new Set(work.photographs.map(({ photograph }) => photograph))];
    const photographs = ids.map((photograph) => ({ work_id: work.id, photograph_id: photograph }));
    if (photographs.length > 0) await database.insertInto('work_photographs').values(photographs).execute();
    const media = mediaOf(work);
    if (media.length > 0) await database.insertInto('work_media').values(media).execute();
  }
  return {
    async add(work) {
      await database.insertInto('works').values(workToRow(work)).execute();
      await attach(work);
    },
    async find(id) {
      const row = await database.selectFrom('works').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? workFromRow(row) : null;
    },
    async list({ search, putBy, stone, stage, after, limit }) {
      const mark = after === null ? null : readMark(after);
      if (after !== null && mark === null) return null;
      let page = database
        .selectFrom('works')
        .select('works.id')
        .where('works.put_by', 'in', putByShown(putBy))
        .orderBy('works.changed_at', 'desc')
        .orderBy('works.id', 'desc')
        .limit(limit + 1);
      if (stone !== null) page = page.where('works.stone_id', '=', stone);
      if (stage !== null) page = page.where('works.stage', '=', stage);
      for (const word of searchWords(search)) page = page.where(foundIn(word));
      if (mark) {
        page = page.where(({ eb, refTuple, tuple }) =>
          eb(refTuple('works.changed_at', 'works.id'), '<', tuple(mark.key, mark.id)),
        );
      }
      // the page is chosen in an index alone; only its own rows are then read
      const rows = await database
        .selectFrom('works')
        .innerJoin('stones', 'stones.id', 'works.stone_id')
        .select(['works.id', 'works.title', 'works.stone_id', 'stones.name as stone_name', 'works.stage'])
        .select(['works.halfway', 'works.zone_count', 'works.put_by', 'works.version'])
        .select(['works.changed_at', 'works.sample'])
        .where('works.id', 'in', page)
        .orderBy('works.changed_at', 'desc')
        .orderBy('works.id', 'desc')
        .execute();
      const cut = pageOf(rows, limit, (row) => ({ key: row.changed_at, id: row.id }));
      const works = cut.page.map((row) => ({
        id: row.id,
        title: row.title,
        stoneId: row.stone_id,
        stoneName: row.stone_name,
        stage: row.stage as WorkStage,
        halfway: row.halfway === 1,
        zones: row.zone_count,
        putBy: row.put_by === 1,
        version: row.version,
        changedAt: row.changed_at,
        sample: row.sample === 1,
      }));
      return { works, next: cut.next };
    },
    async save(work, from) {
      const outcome = await database
        .updateTable('works')
        .set(workToRow(work))
        .where('id', '=', work.id)
        .where('version', '=', from)
        .executeTakeFirst();
      if (outcome.numUpdatedRows !== 1n) return false;
      await attach(work);
      return true;
    },
    async onStone(stoneId, limit = 50) {
      const rows = await database
        .selectFrom('works')
        .selectAll()
        .where('stone_id', '=', stoneId)
        .where('put_by', '=', 0)
        .orderBy('changed_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit)
        .execute();
      return rows.map(workFromRow);
    },
    async withPhotographs(photographs) {
      if (photographs.length === 0) return [];
      const rows = await database
        .selectFrom('works')
        .selectAll()
        .where('id', 'in', (inner) =>
          inner
            .selectFrom('work_photographs')
            .select('work_id')
            .where('photograph_id', 'in', [...photographs]),
        )
        .orderBy('created_at')
        .orderBy('id')
        .execute();
      return rows.map(workFromRow);
    },
  };
}

/** Whether a word stands in the work's own words or in those of its stone. */
function foundIn(word: string) {
  return sql<boolean>`(instr(works.search_text, ${word}) > 0
    OR works.stone_id IN (SELECT stones.id FROM stones WHERE instr(stones.search_text, ${word}) > 0))`;
}
