import type { Kysely, Selectable } from 'kysely';
import type { CuratedPrint, Edition, EditionDraft, PrintKind } from '../../records/edition.ts';
import type { EditionTable } from '../database/editionTables.ts';
import type { Tables } from '../database/tables.ts';

export interface EditionRepository {
  /** Adds an edition, without prints; its work must be there. */
  add(edition: Edition): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<Edition | null>;
  /** A work's editions, newest first, those put by too. */
  ofWork(workId: string): Promise<readonly Edition[]>;
  /** Editions in use of every work, newest first. */
  inUse(most: number): Promise<readonly Edition[]>;
  /** Ids of all editions. */
  ids(): Promise<readonly string[]>;
  /** Puts an edition in place of its version `from`, its prints untouched; false where it is at another. */
  save(edition: Edition, from: number): Promise<boolean>;
  /** Puts prints in place of those before. */
  replacePrints(id: string, prints: readonly CuratedPrint[]): Promise<void>;
}

function toRow({ id, workId, putBy, version, createdAt, changedAt, sample, prints: _, ...draft }: Edition) {
  return {
    id,
    work_id: workId,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    put_by: putBy ? 1 : 0,
    sample: sample ? 1 : 0,
    record_json: JSON.stringify(draft satisfies EditionDraft),
  } satisfies EditionTable;
}

function fromRow(row: Selectable<EditionTable>, prints: readonly CuratedPrint[]): Edition {
  return {
    ...(JSON.parse(row.record_json) as EditionDraft),
    id: row.id,
    workId: row.work_id,
    prints,
    putBy: row.put_by === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}

/** The editions' rows of an open database or of a transaction. */
export function editionRepositoryIn(database: Kysely<Tables>): EditionRepository {
  async function printsOf(id: string): Promise<readonly CuratedPrint[]> {
    const rows = await database
      .selectFrom('edition_prints')
      .select(['impression', 'kind', 'number'])
      .where('edition_id', '=', id)
      .orderBy('kind')
      .orderBy('number')
      .orderBy('impression')
      .execute();
    return rows.map(({ impression, kind, number }) => ({ impression, kind: kind as PrintKind, number }));
  }
  return {
    async add(edition) {
      await database.insertInto('editions').values(toRow(edition)).execute();
    },
    async find(id) {
      const row = await database.selectFrom('editions').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row, await printsOf(id)) : null;
    },
    async ofWork(workId) {
      const rows = await database
        .selectFrom('editions')
        .selectAll()
        .where('work_id', '=', workId)
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .execute();
      return Promise.all(rows.map(async (row) => fromRow(row, await printsOf(row.id))));
    },
    async inUse(most) {
      const rows = await database
        .selectFrom('editions')
        .selectAll()
        .where('put_by', '=', 0)
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(most)
        .execute();
      return Promise.all(rows.map(async (row) => fromRow(row, await printsOf(row.id))));
    },
    async ids() {
      const rows = await database.selectFrom('editions').select('id').orderBy('id').execute();
      return rows.map(({ id }) => id);
    },
    async save(edition, from) {
      const outcome = await database
        .updateTable('editions')
        .set(toRow(edition))
        .where('id', '=', edition.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
    async replacePrints(id, prints) {
      await database.deleteFrom('edition_prints').where('edition_id', '=', id).execute();
      if (prints.length === 0) return;
      const rows = prints.map(({ impression, kind, number }) => ({
        edition_id: id,
        impression,
        kind,
        number,
      }));
      await database.insertInto('edition_prints').values(rows).execute();
    },
  };
}
