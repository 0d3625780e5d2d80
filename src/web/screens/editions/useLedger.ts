import { useQueryClient } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { LedgerEntry, LedgerKind, LedgerPayloads, LedgerState } from '../../../records/ledger.ts';
import { lastOwnEntry } from '../../../studio/editions/countingEntries.ts';
import { ledgerState } from '../../../studio/editions/ledgerState.ts';
import {
  holdLedgerEntry,
  ledgerKey,
  mergedEntries,
  readLedger,
  sendLedgerEntry,
} from '../../client/editions.ts';
import type { ToSendView } from '../../managers/bench/logToSend.ts';
import { keepWho, readWho } from '../../managers/bench/whoHere.ts';
import { shownLedger, type UnsentEntry } from '../../managers/editions/shownLedger.ts';
import { useClock } from '../bench/useClock.ts';
import { useSentLog } from '../bench/useSentLog.ts';

/** How often the screen looks at the clock, ms. */
const lookMs = 1000;

export interface Ledger {
  /** As it stands with what is not sent yet; null until it is read. */
  readonly state: LedgerState | null;
  /** The moment that it stands so. */
  readonly now: Date;
  /** All entries, sent or not, in order. */
  readonly entries: readonly LedgerEntry[];
  /** The last entry of this device that still counts. */
  readonly last: LedgerEntry | null;
  readonly toSend: ToSendView<UnsentEntry>;
  readonly failed: unknown;
  /** When this device last heard the ledger, ms since 1970, where the server is out of reach since the page opened. */
  readonly heldSince: number | null;
  /** Whose hands this device logs for; null where nobody said. */
  readonly who: string | null;
  setWho(who: string | null): void;
  log<Kind extends LedgerKind>(kind: Kind, payload: LedgerPayloads[Kind]): void;
}

/** The ledger of an edition as this device sees it, sent or not, and adding to it. */
export function useLedger(id: string): Ledger {
  const queries = useQueryClient();
  const [who, setWho] = useState(() => readWho(localStorage));
  const { kept, toSend, device, failed, heldSince, add } = useSentLog<UnsentEntry, LedgerEntry>({
    of: 'ledger',
    id,
    queryKey: ledgerKey(id),
    read: () => readLedger(id),
    merged: mergedEntries,
    send: (entry) => sendLedgerEntry(id, entry),
    onKept: (entry) => holdLedgerEntry(queries, id, entry),
  });
  const now = useClock(lookMs);
  const entries = useMemo(() => kept && shownLedger(kept, toSend.unsent), [kept, toSend.unsent]);
  const state = useMemo(() => (entries ? ledgerState(entries, new Date(now)) : null), [entries, now]);
  const last = useMemo(() => (entries ? lastOwnEntry(entries, device) : null), [entries, device]);
  return {
    state,
    now: new Date(now),
    entries: entries ?? [],
    last,
    toSend,
    failed,
    heldSince,
    who,
    setWho: (name) => {
      keepWho(localStorage, name);
      setWho(name);
    },
    log: (kind, payload) => add({ kind, payload }, who?.trim() || null),
  };
}
