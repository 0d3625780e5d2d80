import { type Kysely, sql } from 'kysely';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { RunEvent, RunSummary } from '../../records/run.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work, WorkStage } from '../../records/work.ts';
import type { LedgerEntryTable } from '../database/editionTables.ts';
import type { RunEventTable } from '../database/runTables.ts';
import type { Tables } from '../database/tables.ts';
import { comparisonFromRow, type StoredComparison } from './storedComparison.ts';
import { ledgerEntryFromRow } from './storedLedgerEntry.ts';
import { runEventFromRow, runFromRow, selectRuns } from './storedRun.ts';

/** What is read of many works at once: how they wait, and what a room's record of its waits stands on. */
export interface WaitRepository {
  /** Every run of every work, those put by too: by the work's id, newest first. */
  allRuns(): Promise<readonly RunSummary[]>;
  /** The newest run of each of these works that has one, by the work's id. */
  newestRuns(workIds: readonly string[]): Promise<ReadonlyMap<string, RunSummary>>;
  /** The works of these ids and, besides, the last changed ones in use; those that are not there are left out. */
  worksOnRack(workIds: readonly string[], lastChanged: number): Promise<readonly WorkOnRack[]>;
  /** The last event of each of these runs that has one, by the run's id. */
  lastEvents(runs: readonly RunSummary[]): Promise<ReadonlyMap<string, RunEvent>>;
  /** The last entries of the ledger of every edition in use of those of these works whose stone is still worked, in order. */
  lastAtPress(
    workIds: readonly string[],
  ): Promise<readonly { readonly workId: string; readonly entries: readonly LedgerEntry[] }[]>;
  /** Measured comparisons with each work to which a photograph of theirs is attached, oldest first. */
  measuredPrints(): Promise<readonly MeasuredPrint[]>;
}

/** What a rack says of a work and its stone beside how it stands. */
export interface WorkOnRack extends Pick<Work, 'id' | 'title' | 'stage' | 'origin' | 'stoneId'> {
  readonly stone: Pick<KeptStone, 'name' | 'widthMm' | 'heightMm' | 'colour'>;
}

export interface MeasuredPrint {
  readonly workId: string;
  readonly comparison: StoredComparison;
}

/** So many entries back stands what was done to the stone last, however much was taken back. */
const lastEntries = 24;

/** What this room’s waits are read from, of an open database or of a transaction. */
export function waitRepositoryIn(database: Kysely<Tables>): WaitRepository {
  const runs = () => selectRuns(database);
  return {
    async allRuns() {
      const rows = await runs()
        .orderBy('work_id')
        .orderBy('started_at', 'desc')
        .orderBy('id', 'desc')
        .execute();
      return rows.map(runFromRow);
    },
    async newestRuns(workIds) {
      if (workIds.length === 0) return new Map();
      const rows = await runs().where('work_id', 'in', workIds).orderBy('started_at').orderBy('id').execute();
      // the last of a work that is set is its newest
      return new Map(rows.map((row) => [row.work_id, runFromRow(row)]));
    },
    async worksOnRack(workIds, lastChanged) {
      const rows = await database
        .selectFrom('works')
        .innerJoin('stones', 'stones.id', 'works.stone_id')
        .select(['works.id', 'works.title', 'works.stage', 'works.stone_id'])
        .select(['stones.name', 'stones.width_mm', 'stones.height_mm', 'stones.colour'])
        // the drawing is long; only of works with a past is anything of it wanted
        .select(
          sql<string | null>`iif(works.halfway, json_extract(works.record_json, '$.origin'), NULL)`.as(
            'origin',
          ),
        )
        .where(({ eb, or, selectFrom }) =>
          or([
            eb('works.id', 'in', sql<string>`(SELECT value FROM json_each(${JSON.stringify(workIds)}))`),
            eb(
              'works.id',
              'in',
              selectFrom('works as newest')
                .select('newest.id')
                .where('newest.put_by', '=', 0)
                .orderBy('newest.changed_at', 'desc')
                .orderBy('newest.id', 'desc')
                .limit(lastChanged),
            ),
          ]),
        )
        .execute();
      return rows.map((row) => ({
        id: row.id,
        title: row.title,
        stage: row.stage as WorkStage,
        origin: row.origin === null ? { kind: 'new' } : (JSON.parse(row.origin) as Work['origin']),
        stoneId: row.stone_id,
        stone: { name: row.name, widthMm: row.width_mm, heightMm: row.height_mm, colour: row.colour },
      }));
    },
    async lastEvents(runs) {
      const wanted = runs.filter(({ events }) => events > 0).map(({ id, events }) => [id, events]);
      const rows = await sql<RunEventTable>`
        SELECT run_events.* FROM json_each(${JSON.stringify(wanted)}) AS wanted
        CROSS JOIN run_events ON run_events.run_id = json_extract(wanted.value, '$[0]')
          AND run_events.sequence = json_extract(wanted.value, '$[1]')`.execute(database);
      return new Map(rows.rows.map((row) => [row.run_id, runEventFromRow(row)]));
    },
    async lastAtPress(workIds) {
      const rows = await sql<LedgerEntryTable & { work_id: string }>`
        SELECT entries.*, editions.work_id FROM editions
        JOIN works ON works.id = editions.work_id AND works.stage NOT IN ('closed-down', 'regrained')
        JOIN ledger_entries AS entries ON entries.edition_id = editions.id
          AND entries.sequence > ${-lastEntries} + (
            SELECT max(sequence) FROM ledger_entries WHERE edition_id = editions.id)
        WHERE editions.put_by = 0
          AND editions.work_id IN (SELECT value FROM json_each(${JSON.stringify(workIds)}))
        ORDER BY editions.id, entries.sequence`.execute(database);
      const byEdition = new Map<string, { workId: string; entries: LedgerEntry[] }>();
      for (const row of rows.rows) {
        const ledger = byEdition.get(row.edition_id) ?? { workId: row.work_id, entries: [] };
        ledger.entries.push(ledgerEntryFromRow(row));
        byEdition.set(row.edition_id, ledger);
      }
      return [...byEdition.values()];
    },
    async measuredPrints() {
      const pairs = database
        .selectFrom('comparison_photographs')
        .innerJoin(
          'work_photographs',
          'work_photographs.photograph_id',
          'comparison_photographs.photograph_id',
        )
        .select(['comparison_photographs.comparison_id', 'work_photographs.work_id'])
        .distinct();
      const rows = await database
        .selectFrom('comparisons')
        .innerJoin(pairs.as('pairs'), 'pairs.comparison_id', 'comparisons.id')
        .selectAll('comparisons')
        .select('pairs.work_id')
        .where('comparisons.put_by_at', 'is', null)
        .where('comparisons.state', '=', 'measured')
        .orderBy('comparisons.created_at')
        .orderBy('comparisons.id')
        .execute();
      return rows.map((row) => ({ workId: row.work_id, comparison: comparisonFromRow(row) }));
    },
  };
}
