import { type Kysely, sql } from 'kysely';
import type { Run, RunEvent, RunEventKind, RunSummary } from '../../records/run.ts';
import type { WorkStage } from '../../records/work.ts';
import type { Tables } from '../database/tables.ts';
import { runEventFromRow, runEventToRow, runFromRow, selectRuns } from './storedRun.ts';

export interface RunEventQuery {
  /** Only events with a higher sequence number. */
  readonly after: number;
  readonly limit: number;
  /** Kinds that are left out. */
  readonly without?: readonly RunEventKind[];
  /** The only kinds that are read; all unless given. */
  readonly only?: readonly RunEventKind[];
}

export interface RunRepository {
  /**
   * Adds a run; its work and plan must be there, and no other run may carry its client id.
   * @param workStage the stage that the work is in now
   */
  add(run: Run, clientId: string | null, workStage: WorkStage): Promise<void>;
  /**
   * Gives a plan to those runs of a work that have none, where no etch was laid yet and no first etch is over. They follow it from
   * here on.
   */
  takePlan(workId: string, planId: string): Promise<void>;
  /** When graining a work away from a stone was last begun or ended at the bench, and not taken back; null where it never was. */
  grainedAwayAt(stoneId: string): Promise<string | null>;
  /** The stage that a run found its work in; null where that was not kept. */
  workStageAtStart(id: string): Promise<WorkStage | null>;
  find(id: string): Promise<RunSummary | null>;
  /** The run that was begun under a client id. */
  begunUnder(clientId: string): Promise<RunSummary | null>;
  /** A work's runs, newest first. */
  ofWork(workId: string): Promise<readonly RunSummary[]>;
  /** The newest run of every work in use that has one. */
  newestOfWorks(): Promise<readonly RunSummary[]>;
  /** The event that a client id stands for in a run. */
  eventOf(runId: string, clientId: string): Promise<RunEvent | null>;
  addEvent(runId: string, event: RunEvent): Promise<void>;
  /** Events in order. */
  events(runId: string, query: RunEventQuery): Promise<readonly RunEvent[]>;
}

/** How many runs of one work a list shows: more than anyone makes. */
const mostListed = 200;

/** The runs' rows of an open database or of a transaction. Rows are added and never changed, but for a plan that a run is given. */
export function runRepositoryIn(database: Kysely<Tables>): RunRepository {
  const runs = () => selectRuns(database);
  return {
    async add({ id, workId, planId, workVersion, startedAt }, clientId, workStage) {
      await database
        .insertInto('runs')
        .values({
          id,
          client_id: clientId,
          work_id: workId,
          plan_id: planId,
          work_version: workVersion,
          started_at: startedAt,
          work_stage: workStage,
        })
        .execute();
    },
    async takePlan(workId, planId) {
      await database
        .updateTable('runs')
        .set({ plan_id: planId })
        .where('work_id', '=', workId)
        .where('plan_id', 'is', null)
        .where(({ not, exists, selectFrom }) =>
          not(
            exists(
              selectFrom('run_events')
                .whereRef('run_events.run_id', '=', 'runs.id')
                .where(({ or, and, eb }) =>
                  or([
                    eb('run_events.kind', '=', 'laid'),
                    and([
                      eb('run_events.kind', 'in', ['stage-ended', 'skipped']),
                      eb(sql`json_extract(run_events.payload_json, '$.stage')`, '=', 'first-etch'),
                    ]),
                  ]),
                )
                .select('run_events.sequence'),
            ),
          ),
        )
        .execute();
    },
    async grainedAwayAt(stoneId) {
      const rows = await database
        .selectFrom('run_events')
        .innerJoin('runs', 'runs.id', 'run_events.run_id')
        .innerJoin('works', 'works.id', 'runs.work_id')
        .where('works.stone_id', '=', stoneId)
        .where('run_events.kind', 'in', ['stage-started', 'stage-ended', 'repeated', 'remembered'])
        .where(sql`json_extract(run_events.payload_json, '$.stage')`, '=', 'regrain')
        .where(({ not, exists, selectFrom }) =>
          not(
            exists(
              selectFrom('run_events as taken_back')
                .whereRef('taken_back.run_id', '=', 'run_events.run_id')
                .where('taken_back.kind', '=', 'undo')
                .where(
                  sql`json_extract(taken_back.payload_json, '$.clientId')`,
                  '=',
                  sql.ref('run_events.client_id'),
                )
                .select('taken_back.sequence'),
            ),
          ),
        )
        .select(['run_events.at', 'run_events.received_at'])
        .execute();
      // what was sent late happened before it was received; a clock that runs ahead is not believed
      const moments = rows.map(({ at, received_at }) => Math.min(Date.parse(at), Date.parse(received_at)));
      return moments.length === 0 ? null : new Date(Math.max(...moments)).toISOString();
    },
    async workStageAtStart(id) {
      const row = await database
        .selectFrom('runs')
        .select('work_stage')
        .where('id', '=', id)
        .executeTakeFirst();
      return (row?.work_stage ?? null) as WorkStage | null;
    },
    async find(id) {
      const row = await runs().where('id', '=', id).executeTakeFirst();
      return row ? runFromRow(row) : null;
    },
    async begunUnder(clientId) {
      const row = await runs().where('client_id', '=', clientId).executeTakeFirst();
      return row ? runFromRow(row) : null;
    },
    async ofWork(workId) {
      const rows = await runs()
        .where('work_id', '=', workId)
        .orderBy('started_at', 'desc')
        .orderBy('id', 'desc')
        .limit(mostListed)
        .execute();
      return rows.map(runFromRow);
    },
    async newestOfWorks() {
      const rows = await runs()
        .innerJoin('works', 'works.id', 'runs.work_id')
        .where('works.put_by', '=', 0)
        .where('runs.id', '=', ({ selectFrom }) =>
          selectFrom('runs as later')
            .whereRef('later.work_id', '=', 'runs.work_id')
            .select('later.id')
            .orderBy('later.started_at', 'desc')
            .orderBy('later.id', 'desc')
            .limit(1),
        )
        .execute();
      return rows.map(runFromRow);
    },
    async eventOf(runId, clientId) {
      const row = await database
        .selectFrom('run_events')
        .selectAll()
        .where('run_id', '=', runId)
        .where('client_id', '=', clientId)
        .executeTakeFirst();
      return row ? runEventFromRow(row) : null;
    },
    async addEvent(runId, event) {
      await database.insertInto('run_events').values(runEventToRow(runId, event)).execute();
    },
    async events(runId, { after, limit, without = [], only }) {
      let rows = database
        .selectFrom('run_events')
        .selectAll()
        .where('run_id', '=', runId)
        .where('sequence', '>', after)
        .orderBy('sequence')
        .limit(limit);
      if (without.length > 0) rows = rows.where('kind', 'not in', without);
      if (only) rows = rows.where('kind', 'in', only);
      return (await rows.execute()).map(runEventFromRow);
    },
  };
}
