import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { LedgerEntry, LedgerKind, LedgerPayloads, LedgerState } from '../../../records/edition.ts';
import { lastOwnEntry } from '../../../studio/editions/countingEntries.ts';
import { ledgerState } from '../../../studio/editions/ledgerState.ts';
import {
  holdLedgerEntry,
  ledgerKey,
  mergedEntries,
  readLedger,
  sendLedgerEntry,
} from '../../client/editions.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { deviceName, newClientId } from '../../managers/bench/clientIds.ts';
import { type OutboxView, RunOutbox } from '../../managers/bench/runOutbox.ts';
import { keepWho, readWho } from '../../managers/bench/whoHere.ts';
import { shownLedger, type UnsentEntry } from '../../managers/editions/shownLedger.ts';

/** How often what is unsent is tried again, and how often the screen looks at the clock, ms. */
const againMs = 2000;
const lookMs = 1000;

export interface Ledger {
  /** As it stands with what is not sent yet; null until it is read. */
  readonly state: LedgerState | null;
  /** All entries, sent or not, in order. */
  readonly entries: readonly LedgerEntry[];
  /** The last entry of this device that still counts. */
  readonly last: LedgerEntry | null;
  readonly outbox: OutboxView<UnsentEntry>;
  readonly failed: unknown;
  /** Whose hands this device logs for; null where nobody said. */
  readonly who: string | null;
  setWho(who: string | null): void;
  log<Kind extends LedgerKind>(kind: Kind, payload: LedgerPayloads[Kind]): void;
}

/** The ledger of an edition as this device sees it, sent or not, and adding to it. */
export function useLedger(id: string): Ledger {
  const queries = useQueryClient();
  const [device] = useState(() => deviceName(localStorage));
  const [who, setWho] = useState(() => readWho(localStorage));
  const [outbox] = useState(
    () =>
      new RunOutbox<UnsentEntry, LedgerEntry>(id, {
        shelf: localStorage,
        send: (entry) => sendLedgerEntry(id, entry),
        isRefusal: (thrown) => thrown instanceof FailedRequest,
        now: () => new Date(),
        onKept: (entry) => holdLedgerEntry(queries, id, entry),
      }),
  );
  const held = useSyncExternalStore(outbox.listen, outbox.current);
  useEffect(() => {
    const drain = () => void outbox.drain();
    drain();
    const again = setInterval(drain, againMs);
    addEventListener('online', drain);
    return () => {
      clearInterval(again);
      removeEventListener('online', drain);
    };
  }, [outbox]);
  const read = useQuery({
    queryKey: ledgerKey(id),
    queryFn: async () =>
      mergedEntries(queries.getQueryData<readonly LedgerEntry[]>(ledgerKey(id)), await readLedger(id)),
    staleTime: 0,
  });
  const kept = read.data;
  const now = useSecond();
  const entries = useMemo(() => kept && shownLedger(kept, held.unsent), [kept, held.unsent]);
  const state = useMemo(() => (entries ? ledgerState(entries, new Date(now)) : null), [entries, now]);
  const last = useMemo(() => (entries ? lastOwnEntry(entries, device) : null), [entries, device]);
  return {
    state,
    entries: entries ?? [],
    last,
    outbox: held,
    failed: kept ? null : read.error,
    who,
    setWho: (name) => {
      keepWho(localStorage, name);
      setWho(name);
    },
    log: (kind, payload) =>
      outbox.add({
        clientId: newClientId(),
        kind,
        payload,
        at: new Date().toISOString(),
        actor: who?.trim() || null,
        device,
      }),
  };
}

/** The time of this device's clock, looked at every second. */
function useSecond(): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const looking = setInterval(() => setNow(Date.now()), lookMs);
    return () => clearInterval(looking);
  }, []);
  return now;
}
