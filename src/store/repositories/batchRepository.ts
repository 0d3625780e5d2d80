import type { Kysely } from 'kysely';
import type { Batch, BatchKind } from '../../records/batch.ts';
import type { BatchTable } from '../database/recordTables.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';
import type { PageQuery } from './pageMark.ts';

export interface BatchQuery extends PageQuery {
  readonly kind: BatchKind | null;
}

export interface BatchPage {
  readonly batches: readonly Batch[];
  readonly next: string | null;
}

export interface BatchRepository extends Omit<EntryRows<Batch>, 'list'> {
  /** Newest first; null where `after` can't be read. */
  list(query: BatchQuery): Promise<BatchPage | null>;
}

/** The batches' rows of an open database or of a transaction. */
export function batchRepositoryIn(database: Kysely<Tables>): BatchRepository {
  const rows = entryRowsIn<Batch, Pick<BatchTable, 'kind'>>(
    database,
    'batches',
    (batch) => [
      batch.name,
      batch.kind,
      batch.note,
      ...('product' in batch ? [batch.product, batch.lot] : []),
    ],
    ({ kind }) => ({ kind }),
  );
  return {
    ...rows,
    async list({ kind, ...query }) {
      const found = await rows.list(query, { kind });
      return found && { batches: found.page, next: found.next };
    },
  };
}
