import type { QueryClient } from '@tanstack/react-query';
import type { LedgerEntry } from '../../../records/edition.ts';
import { holdLedgerEntry, sendLedgerEntry } from '../../client/editions.ts';
import { rackChanged } from '../../client/rack.ts';
import { holdRunEvent, sendRunEvent } from '../../client/runs.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { RunOutbox } from '../../managers/bench/runOutbox.ts';
import type { UnsentEntry } from '../../managers/editions/shownLedger.ts';
import { tapShelfOf } from '../../managers/held/tapShelf.ts';

const shared = {
  isRefusal: (thrown: unknown) => thrown instanceof FailedRequest,
  now: () => new Date(),
} as const;

/** What this browser holds unsent of a run; what is sent changes the rack. */
export function runOutboxOf(queries: QueryClient, runId: string): RunOutbox {
  return new RunOutbox({
    ...shared,
    shelf: tapShelfOf('run', runId),
    send: (event) => sendRunEvent(runId, event),
    onKept: (event) => {
      holdRunEvent(queries, runId, event);
      rackChanged(queries);
    },
  });
}

/** What this browser holds unsent of an edition's ledger. */
export function ledgerOutboxOf(queries: QueryClient, editionId: string): RunOutbox<UnsentEntry, LedgerEntry> {
  return new RunOutbox({
    ...shared,
    shelf: tapShelfOf('ledger', editionId),
    send: (entry) => sendLedgerEntry(editionId, entry),
    onKept: (entry) => holdLedgerEntry(queries, editionId, entry),
  });
}
