import type { QueryClient } from '@tanstack/react-query';
import type { LedgerEntry } from '../../../records/ledger.ts';
import { holdLedgerEntry, sendLedgerEntry } from '../../client/editions.ts';
import { rackChanged } from '../../client/rack.ts';
import { holdRunEvent, sendRunEvent } from '../../client/runs.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { LogToSend } from '../../managers/bench/logToSend.ts';
import type { UnsentEntry } from '../../managers/editions/shownLedger.ts';
import { tapShelfOf } from '../../managers/held/tapShelf.ts';

const shared = {
  isRefusal: (thrown: unknown) => thrown instanceof FailedRequest,
  now: () => new Date(),
} as const;

/** What this browser holds unsent of a run; what is sent changes the rack. */
export function runToSendOf(queries: QueryClient, runId: string): LogToSend {
  return new LogToSend({
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
export function ledgerToSendOf(queries: QueryClient, editionId: string): LogToSend<UnsentEntry, LedgerEntry> {
  return new LogToSend({
    ...shared,
    shelf: tapShelfOf('ledger', editionId),
    send: (entry) => sendLedgerEntry(editionId, entry),
    onKept: (entry) => holdLedgerEntry(queries, editionId, entry),
  });
}
