import type { QueryClient } from '@tanstack/react-query';
import { rackChanged } from '../../client/rack.ts';
import { holdRunEvent, sendRunEvent } from '../../client/runs.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { RunOutbox } from '../../managers/bench/runOutbox.ts';

/** What this browser holds unsent of a run; what is sent changes the rack. */
export function runOutboxOf(queries: QueryClient, runId: string): RunOutbox {
  return new RunOutbox(runId, {
    shelf: localStorage,
    send: (event) => sendRunEvent(runId, event),
    isRefusal: (thrown) => thrown instanceof FailedRequest,
    now: () => new Date(),
    onKept: (event) => {
      holdRunEvent(queries, runId, event);
      rackChanged(queries);
    },
  });
}
