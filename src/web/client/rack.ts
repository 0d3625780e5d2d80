import type { QueryClient } from '@tanstack/react-query';
import type { LeavingList, Rack, WaitRecord } from '../../records/rack.ts';
import type { RunSummary } from '../../records/run.ts';
import { ask, withJson } from './ask.ts';
import { worksKey } from './workList.ts';
import { workKey } from './works.ts';

export const rackKey = ['rack'] as const;
export const waitsKey = ['waits'] as const;

/** How all stones stand now, by the server's clock. */
export function readRack(): Promise<Rack> {
  return ask('/api/rack');
}

/** What to do before leaving. */
export function readLeaving(): Promise<LeavingList> {
  return ask('/api/rack/leaving');
}

/** This room's own record of the waits. */
export async function readWaits(): Promise<readonly WaitRecord[]> {
  return (await ask<{ waits: readonly WaitRecord[] }>('/api/rack/waits')).waits;
}

/** Begins a run of a work that has none, to log in; asked again under the same client id, it is the same run. */
export function beginRun(workId: string, clientId: string): Promise<RunSummary> {
  return ask('/api/runs', withJson('POST', { workId, clientId }));
}

/** Taps at a bench come faster than a rack must be read, ms. */
const restMs = 1000;
let waiting: ReturnType<typeof setTimeout> | null = null;

/**
 * Has the rack and the list of works read anew after something was logged, once for all that comes within a second: a
 * run moves the stage of its work. An open work is read anew where it is looked at next.
 */
export function rackChanged(queries: QueryClient): void {
  if (waiting !== null) return;
  waiting = setTimeout(() => {
    waiting = null;
    void queries.invalidateQueries({ queryKey: rackKey, exact: true });
    void queries.invalidateQueries({ queryKey: worksKey });
    void queries.invalidateQueries({ queryKey: workKey('').slice(0, 1), refetchType: 'none' });
  }, restMs);
}
