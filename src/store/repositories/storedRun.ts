import type { Kysely } from 'kysely';
import type { RunEvent, RunEventKind, RunSummary } from '../../records/run.ts';
import type { RunEventTable, RunTable } from '../database/runTables.ts';
import type { Tables } from '../database/tables.ts';

/** All runs' rows with the sequence number of their last event, to be narrowed; `runFromRow` reads one. */
export function selectRuns(database: Kysely<Tables>) {
  return database
    .selectFrom('runs')
    .selectAll('runs')
    .select(({ selectFrom }) =>
      selectFrom('run_events')
        .whereRef('run_events.run_id', '=', 'runs.id')
        .select((inner) => inner.fn.max('run_events.sequence').as('last'))
        .as('last'),
    );
}

/** A run from its row, with the sequence number of its last event. */
export function runFromRow(row: RunTable & { readonly last: number | null }): RunSummary {
  return {
    id: row.id,
    workId: row.work_id,
    planId: row.plan_id,
    workVersion: row.work_version,
    startedAt: row.started_at,
    events: row.last ?? 0,
  };
}

/** Taps say the same few things over and over: each is read once. */
const payloadsRead = new Map<string, unknown>();
const payloadsHeld = 500;
const longestHeld = 200;

function readPayload(text: string): unknown {
  if (text.length > longestHeld) return JSON.parse(text);
  const held = payloadsRead.get(text);
  if (held !== undefined) return held;
  const payload: unknown = JSON.parse(text);
  if (payloadsRead.size >= payloadsHeld) payloadsRead.clear();
  payloadsRead.set(text, payload);
  return payload;
}

/** The row of an event of a run; `runEventFromRow` reads it. */
export function runEventToRow(runId: string, event: RunEvent): RunEventTable {
  return {
    run_id: runId,
    sequence: event.sequence,
    client_id: event.clientId,
    kind: event.kind,
    at: event.at,
    sent_at: event.sentAt,
    received_at: event.receivedAt,
    actor: event.actor,
    device: event.device,
    payload_json: JSON.stringify(event.payload ?? null),
  };
}

/** An event from its row, its payload parsed. */
export function runEventFromRow(row: RunEventTable): RunEvent {
  return {
    sequence: row.sequence,
    clientId: row.client_id,
    kind: row.kind as RunEventKind,
    at: row.at,
    sentAt: row.sent_at,
    receivedAt: row.received_at,
    actor: row.actor,
    device: row.device,
    payload: readPayload(row.payload_json),
  } as RunEvent;
}
