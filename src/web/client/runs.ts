import type { QueryClient } from '@tanstack/react-query';
import type { RunState } from '../../records/bench.ts';
import type { RunEvent, RunEventInput, RunSummary } from '../../records/run.ts';
import { ask, withJson } from './ask.ts';

export const runKey = (id: string) => ['run', id] as const;
export const runsKey = (work: string) => ['runs', work] as const;
export const runEventsKey = (id: string) => ['run-events', id] as const;

/**
 * Begins a run beside a plan, null for the work's newest where there is one; asked again under the same client id, it is
 * the same run.
 */
export function startRun(workId: string, planId: string | null, clientId: string): Promise<RunSummary> {
  return ask('/api/runs', withJson('POST', { workId, planId, clientId }));
}

/** The runs of a work, newest first. */
export async function listRuns(work: string): Promise<readonly RunSummary[]> {
  return (await ask<{ runs: readonly RunSummary[] }>(`/api/works/${work}/runs`)).runs;
}

/** A run as it stands by the server's clock. */
export function openRun(id: string): Promise<RunState> {
  return ask(`/api/runs/${id}`);
}

/** All that a run's log holds, in order. */
export async function readRunEvents(id: string): Promise<readonly RunEvent[]> {
  return (await ask<{ events: readonly RunEvent[] }>(`/api/runs/${id}/events`)).events;
}

/** A server that says nothing for so long counts as out of reach, ms. */
const patienceMs = 10_000;

/** Logs one event; resolves once it is on the disk. */
export function sendRunEvent(id: string, event: RunEventInput): Promise<RunEvent> {
  return ask(`/api/runs/${id}/events`, {
    ...withJson('POST', event),
    signal: AbortSignal.timeout(patienceMs),
  });
}

/** Puts events that were kept into what the page holds of their run, each once: nothing leaves a log. */
export function mergedEvents(
  held: readonly RunEvent[] | undefined,
  more: readonly RunEvent[],
): readonly RunEvent[] {
  const bySequence = new Map([...(held ?? []), ...more].map((event) => [event.sequence, event]));
  return [...bySequence.values()].sort((a, b) => a.sequence - b.sequence);
}

/** Puts an event that was kept into the log of its run, where the page holds that. */
export function holdRunEvent(queries: QueryClient, id: string, event: RunEvent): void {
  queries.setQueryData<readonly RunEvent[]>(runEventsKey(id), (held) => held && mergedEvents(held, [event]));
}
