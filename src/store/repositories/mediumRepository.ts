import type { Kysely, Selectable } from 'kysely';
import type { Medium, StrengthRule } from '../../records/medium.ts';
import type { MediumTable } from '../database/recordTables.ts';
import type { Tables } from '../database/tables.ts';

/** A medium of the studio's own, as it is kept. */
export interface KeptMedium extends Medium {
  readonly version: number;
}

/** Where a medium is used. */
export interface MediumUse {
  readonly workTitle: string;
  /** Name of the work's first zone in that medium. */
  readonly zoneName: string;
}

export interface MediumRepository {
  add(medium: KeptMedium): Promise<void>;
  find(id: string): Promise<KeptMedium | null>;
  /** By name. */
  list(): Promise<readonly KeptMedium[]>;
  /** Puts a medium in place of its version `from`; false, and nothing changed, where it is at another. */
  save(medium: KeptMedium, from: number): Promise<boolean>;
  remove(id: string): Promise<void>;
  /** How many works, those put by included, have a zone in each medium; media without any are left out. */
  workCounts(): Promise<ReadonlyMap<string, number>>;
  /** The work that was changed last among those with a zone in a medium, those put by included. */
  lastUse(id: string): Promise<MediumUse | null>;
}

function toRow({ id, name, version, rule }: KeptMedium): MediumTable {
  return { id, name, version, rule_json: JSON.stringify(rule) };
}

function fromRow(row: Selectable<MediumTable>): KeptMedium {
  return {
    id: row.id,
    name: row.name,
    version: row.version,
    rule: JSON.parse(row.rule_json) as StrengthRule,
  };
}

/** The studio's own media's rows of an open database or of a transaction. */
export function mediumRepositoryIn(database: Kysely<Tables>): MediumRepository {
  return {
    async add(medium) {
      await database.insertInto('media').values(toRow(medium)).execute();
    },
    async find(id) {
      const row = await database.selectFrom('media').selectAll().where('id', '=', id).executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async list() {
      const rows = await database.selectFrom('media').selectAll().orderBy('name').orderBy('id').execute();
      return rows.map(fromRow);
    },
    async save(medium, from) {
      const outcome = await database
        .updateTable('media')
        .set(toRow(medium))
        .where('id', '=', medium.id)
        .where('version', '=', from)
        .executeTakeFirst();
      return outcome.numUpdatedRows === 1n;
    },
    async remove(id) {
      await database.deleteFrom('media').where('id', '=', id).execute();
    },
    async workCounts() {
      const rows = await database
        .selectFrom('work_media')
        .select(({ fn }) => ['medium', fn.countAll<number>().as('works')])
        .groupBy('medium')
        .execute();
      return new Map(rows.map(({ medium, works }) => [medium, Number(works)]));
    },
    async lastUse(id) {
      const row = await database
        .selectFrom('work_media')
        .innerJoin('works', 'works.id', 'work_media.work_id')
        .select(['works.title', 'work_media.zone_name'])
        .where('work_media.medium', '=', id)
        .orderBy('works.changed_at', 'desc')
        .limit(1)
        .executeTakeFirst();
      return row ? { workTitle: row.title, zoneName: row.zone_name } : null;
    },
  };
}
