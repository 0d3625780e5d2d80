import type { Kysely, Selectable } from 'kysely';
import type { Pull } from '../../records/pull.ts';
import type { PullTable } from '../database/pullTables.ts';
import type { Tables } from '../database/tables.ts';

export interface PullRepository {
  /** Adds a pull; its work must be there, and no pull in use of that work may carry its number. */
  add(pull: Pull): Promise<void>;
  /** Archived ones too; null where there is none. */
  find(id: string): Promise<Pull | null>;
  /** The proof in use that carries a number; null where none does. */
  numbered(workId: string, number: number): Promise<Pull | null>;
  /** A work's proofs in use, in order of their numbers; impressions of editions left out. */
  ofWork(workId: string): Promise<readonly Pull[]>;
  /** The impressions of an edition, or of all editions of a work, that have a photograph, in order of their numbers. */
  impressionsOf(of: { readonly edition: string } | { readonly work: string }): Promise<readonly Pull[]>;
  /** The pull that an impression is; null where it has no photograph. */
  ofImpression(editionId: string, impression: string): Promise<Pull | null>;
  /** Puts a pull in place of its version `from`; false, and nothing changed, where it is at another. */
  save(pull: Pull, from: number): Promise<boolean>;
}

/** The pulls' rows of an open database or of a transaction. */
export function pullRepositoryIn(database: Kysely<Tables>): PullRepository {
  const inUse = (workId: string) =>
    database
      .selectFrom('pulls')
      .selectAll()
      .where('work_id', '=', workId)
      .where('put_by', '=', 0)
      .where('edition_id', 'is', null);
  return {
    async add(pull) {
      await database.insertInto('pulls').values(toRow(pull)).execute();
    },
    async find(id) {
      const row = await database.selectFrom('pulls').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async numbered(workId, number) {
      const row = await inUse(workId).where('number', '=', number).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async ofWork(workId) {
      return (await inUse(workId).orderBy('number').execute()).map(fromRow);
    },
    async impressionsOf(of) {
      const impressions = database.selectFrom('pulls').selectAll().where('edition_id', 'is not', null);
      const those =
        'edition' in of
          ? impressions.where('edition_id', '=', of.edition)
          : impressions.where('work_id', '=', of.work);
      return (await those.orderBy('number').orderBy('id').execute()).map(fromRow);
    },
    async ofImpression(editionId, impression) {
      const row = await database
        .selectFrom('pulls')
        .selectAll()
        .where('edition_id', '=', editionId)
        .where('impression', '=', impression)
        .executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async save(pull, from) {
      const outcome = await database
        .updateTable('pulls')
        .set(toRow(pull))
        .where('id', '=', pull.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
  };
}

function toRow(pull: Pull): PullTable {
  const { id, workId, putBy, version, createdAt, changedAt, sample, impression, ...draft } = pull;
  return {
    id,
    work_id: workId,
    number: draft.number,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    put_by: putBy ? 1 : 0,
    sample: sample ? 1 : 0,
    record_json: JSON.stringify(draft),
    edition_id: impression?.edition ?? null,
    impression: impression?.id ?? null,
  };
}

function fromRow(row: Selectable<PullTable>): Pull {
  return {
    ...(JSON.parse(row.record_json) as Omit<Pull, 'id'>),
    id: row.id,
    workId: row.work_id,
    putBy: row.put_by === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
    ...(row.edition_id === null ? {} : { impression: { edition: row.edition_id, id: row.impression! } }),
  };
}
