import type { Kysely } from 'kysely';
import type { Ink, InkVerdict } from '../../records/ink.ts';
import type { InkTable } from '../database/inkTables.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';
import type { PageQuery } from './pageMark.ts';

export interface InkQuery extends PageQuery {
  /** Only mixes that were made for that work. */
  readonly work: string | null;
  readonly verdict: InkVerdict | null;
}

export interface InkPage {
  readonly inks: readonly Ink[];
  readonly next: string | null;
}

export interface InkRepository extends Omit<EntryRows<Ink>, 'list'> {
  /** Newest first; null where `after` can't be read. */
  list(query: InkQuery): Promise<InkPage | null>;
}

/** The mixes' rows of an open database or of a transaction. */
export function inkRepositoryIn(database: Kysely<Tables>): InkRepository {
  const rows = entryRowsIn<Ink, Pick<InkTable, 'work_id' | 'verdict'>>(
    database,
    'inks',
    ({ name, note, softInk, stiffInk, modifier, verdict, verdictWords }) => [
      name,
      softInk,
      stiffInk,
      modifier,
      verdict ?? '',
      verdictWords,
      note,
    ],
    ({ workId, verdict }) => ({ work_id: workId, verdict }),
  );
  return {
    ...rows,
    async list({ work, verdict, ...query }) {
      const found = await rows.list(query, { work_id: work, verdict });
      return found && { inks: found.page, next: found.next };
    },
  };
}
