import type { Kysely } from 'kysely';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { PhotographTable, Tables } from '../database/tables.ts';

/** A photograph's entry with what is needed to find its bytes. */
export interface StoredPhotograph extends PhotographEntry {
  readonly kind: string;
  readonly byteCount: number;
}

export interface PhotographRepository {
  /** Adds a photograph; false, and nothing changed, where it is already there. */
  add(photograph: StoredPhotograph): Promise<boolean>;
  find(id: string): Promise<StoredPhotograph | null>;
}

function fromRow(row: PhotographTable): StoredPhotograph {
  return {
    id: row.id,
    fileName: row.file_name,
    widthPx: row.width_px,
    heightPx: row.height_px,
    addedAt: row.added_at,
    kind: row.kind,
    byteCount: row.byte_count,
  };
}

/** The photographs' rows of an open database. */
export function photographRepositoryIn(database: Kysely<Tables>): PhotographRepository {
  return {
    async add(photograph) {
      const outcome = await database
        .insertInto('photographs')
        .values({
          id: photograph.id,
          file_name: photograph.fileName,
          kind: photograph.kind,
          width_px: photograph.widthPx,
          height_px: photograph.heightPx,
          byte_count: photograph.byteCount,
          added_at: photograph.addedAt,
        })
        .onConflict((conflict) => conflict.column('id').doNothing())
        .executeTakeFirst();
      return outcome.numInsertedOrUpdatedRows === 1n;
    },
    async find(id) {
      const row = await database
        .selectFrom('photographs')
        .selectAll()
        .where('id', '=', id)
        .executeTakeFirst();
      return row ? fromRow(row) : null;
    },
  };
}
