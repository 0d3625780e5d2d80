import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { heardOrHeld } from '../../client/heardOrHeld.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { deviceName, newClientId } from '../../managers/bench/clientIds.ts';
import { LogToSend, type ToSendView } from '../../managers/bench/logToSend.ts';
import { holdAnswer } from '../../managers/held/answerShelf.ts';
import type { LogKind } from '../../managers/held/heldTap.ts';
import { tapShelfOf } from '../../managers/held/tapShelf.ts';

/** How often what is unsent is tried again, and a server that is out of reach asked again, ms. */
const againMs = 2000;

/** The least that a tap must say of itself. */
interface Logged {
  readonly clientId: string;
  readonly at: string;
  readonly actor: string | null;
  readonly device: string | null;
}

export interface SentLogParts<Unsent extends Logged, Kept> {
  readonly of: LogKind;
  /** The run or edition. */
  readonly id: string;
  /** Where the page holds the log as the server has it. */
  readonly queryKey: readonly unknown[];
  readonly read: () => Promise<readonly Kept[]>;
  /** What is held and what was read, each once, in order. */
  readonly merged: (held: readonly Kept[] | undefined, more: readonly Kept[]) => readonly Kept[];
  readonly send: (event: Unsent & { readonly sentAt: string }) => Promise<Kept>;
  /** Told of every tap that the server acknowledged. */
  readonly onKept: (kept: Kept) => void;
}

export interface SentLog<Unsent extends Logged, Kept> {
  /** As the server has it, or last had it; undefined until that and what is unsent here are read. */
  readonly kept: readonly Kept[] | undefined;
  readonly toSend: ToSendView<Unsent>;
  /** What this device is called in the log. */
  readonly device: string;
  readonly failed: unknown;
  /**
   * Where the server is out of reach since this page was opened: when this device heard last what the log holds, ms since
   * 1970 by its clock. Null where the page heard it itself.
   */
  readonly heldSince: number | null;
  /** Logs one thing as of now. */
  add(said: Omit<Unsent, keyof Logged>, actor: string | null): void;
}

/** A log that this device adds to: what the server has of it, what waits here, and sending that in order. */
export function useSentLog<Unsent extends Logged, Kept>(
  parts: SentLogParts<Unsent, Kept>,
): SentLog<Unsent, Kept> {
  const queries = useQueryClient();
  const { of, id, queryKey } = parts;
  const [device] = useState(() => deviceName(localStorage));
  const [toSend] = useState(
    () =>
      new LogToSend<Unsent, Kept>({
        shelf: tapShelfOf(of, id),
        send: parts.send,
        isRefusal: (thrown) => thrown instanceof FailedRequest,
        now: () => new Date(),
        onKept: parts.onKept,
      }),
  );
  const held = useSyncExternalStore(toSend.listen, toSend.current);
  useEffect(() => {
    const drain = () => void toSend.drain();
    drain();
    const again = setInterval(drain, againMs);
    addEventListener('online', drain);
    return () => {
      clearInterval(again);
      removeEventListener('online', drain);
    };
  }, [toSend]);
  const shelfKey = `log ${id}`;
  const [heldSince, setHeldSince] = useState<number | null>(null);
  const read = useQuery({
    queryKey,
    // what was kept while the answer was on its way stays
    queryFn: async () => {
      const heard = await heardOrHeld(shelfKey, parts.read);
      const here = queries.getQueryData<readonly Kept[]>(queryKey);
      // what this page heard itself is no older than what is held of it
      if (heard.heldSince === null || here === undefined) setHeldSince(heard.heldSince);
      return parts.merged(here, heard.value);
    },
    staleTime: 0,
    networkMode: 'always',
    refetchInterval: heldSince === null ? false : againMs,
  });
  const kept = read.data;
  useEffect(() => {
    if (kept && heldSince === null) void holdAnswer(shelfKey, kept, Date.now());
  }, [kept, heldSince, shelfKey]);
  return {
    kept: held.read ? kept : undefined,
    toSend: held,
    device,
    failed: kept ? null : read.error,
    heldSince,
    add: (said, actor) =>
      toSend.add({
        ...said,
        clientId: newClientId(),
        at: new Date().toISOString(),
        actor,
        device,
      } as Unsent),
  };
}
