import type { Kysely, Selectable } from 'kysely';
import type { EtchRow } from '../../records/etch.ts';
import type { EtchTableIssue, EtchTableSummary } from '../../records/etchTableEntry.ts';
import type { EtchTableIssueTable } from '../database/recordTables.ts';
import type { Tables } from '../database/tables.ts';

export interface EtchTableRepository {
  /** Adds a version; false, and nothing changed, where the table has that version already. */
  add(version: EtchTableIssue): Promise<boolean>;
  /** A version, the newest where none is named; null where there is none. */
  find(id: string, version?: number | null): Promise<EtchTableIssue | null>;
  /** All tables by their newest version: the starting ones, then the studio's own by name. */
  list(): Promise<readonly EtchTableSummary[]>;
  /** All issues of a table, newest first. */
  issues(id: string): Promise<readonly EtchTableSummary[]>;
}

function fromRow(row: Selectable<EtchTableIssueTable>): EtchTableIssue {
  const rows = JSON.parse(row.rows_json) as EtchRow[];
  return {
    table: { id: row.table_id, name: row.name, version: row.version, rows },
    savedAt: row.saved_at,
    starting: row.starting === 1,
  };
}

function summaryOf(row: Omit<Selectable<EtchTableIssueTable>, 'rows_json'>): EtchTableSummary {
  return {
    id: row.table_id,
    name: row.name,
    version: row.version,
    starting: row.starting === 1,
    savedAt: row.saved_at,
  };
}

/** The etch tables' rows of an open database or of a transaction. */
export function etchTableRepositoryIn(database: Kysely<Tables>): EtchTableRepository {
  const rows = database.selectFrom('etch_table_issues');
  const summaries = rows.select(['table_id', 'name', 'version', 'starting', 'saved_at']);
  return {
    async add({ table, savedAt, starting }) {
      const outcome = await database
        .insertInto('etch_table_issues')
        .values({
          table_id: table.id,
          version: table.version,
          name: table.name,
          starting: starting ? 1 : 0,
          saved_at: savedAt,
          rows_json: JSON.stringify(table.rows),
        })
        .onConflict((conflict) => conflict.columns(['table_id', 'version']).doNothing())
        .executeTakeFirst();
      return outcome.numInsertedOrUpdatedRows === 1n;
    },
    async find(id, version = null) {
      let query = rows.selectAll().where('table_id', '=', id).orderBy('version', 'desc').limit(1);
      if (version !== null) query = query.where('version', '=', version);
      const row = await query.executeTakeFirst();
      return row ? fromRow(row) : null;
    },
    async list() {
      const newest = await summaries
        .where(({ eb, ref, selectFrom }) =>
          eb(
            'version',
            '=',
            selectFrom('etch_table_issues as other')
              .select(({ fn }) => fn.max('other.version').as('newest'))
              .where('other.table_id', '=', ref('etch_table_issues.table_id')),
          ),
        )
        .orderBy('starting', 'desc')
        .orderBy('name')
        .orderBy('table_id')
        .execute();
      return newest.map(summaryOf);
    },
    async issues(id) {
      const all = await summaries.where('table_id', '=', id).orderBy('version', 'desc').execute();
      return all.map(summaryOf);
    },
  };
}
