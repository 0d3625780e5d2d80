import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { RunState } from '../../../records/bench.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { RunEvent } from '../../../records/run.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { foldRun } from '../../../studio/bench/foldRun.ts';
import { runState } from '../../../studio/bench/runState.ts';
import { holdRunEvent, mergedEvents, readRunEvents, runEventsKey, sendRunEvent } from '../../client/runs.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import type { BenchTap } from '../../managers/bench/benchTaps.ts';
import { deviceName, newClientId } from '../../managers/bench/clientIds.ts';
import { deviceLog, lastOwn } from '../../managers/bench/deviceLog.ts';
import { type OutboxView, RunOutbox } from '../../managers/bench/runOutbox.ts';

/** How often what is unsent is tried again, ms. */
const againMs = 2000;
/** How often the screen looks at the clock, ms; no time is counted by it. */
const lookMs = 200;

export interface BenchLog {
  /** The run as it stands now; null until its log is read. */
  readonly state: RunState | null;
  /** All that counts and all that was taken back, in order, sent or not; empty until it is read. */
  readonly events: readonly RunEvent[];
  /** The last event of this device that still counts. */
  readonly last: RunEvent | null;
  readonly outbox: OutboxView;
  readonly failed: unknown;
  log(...taps: readonly Pick<BenchTap, 'kind' | 'payload'>[]): void;
  undo(): void;
}

export interface BenchLogInput {
  readonly run: RunState;
  readonly work: WorkEntry;
  readonly plan: KeptPlan | null;
  /** How far the server's clock is ahead of this device's, ms. */
  readonly aheadMs: number;
  /** Whose hands are logged; null where nobody said. */
  readonly who: string | null;
}

/** The log of a run as this device sees it, sent or not, and adding to it. */
export function useBenchLog({ run, work, plan, aheadMs, who }: BenchLogInput): BenchLog {
  const queries = useQueryClient();
  const { id } = run;
  const [device] = useState(() => deviceName(localStorage));
  const [outbox] = useState(
    () =>
      new RunOutbox(id, {
        shelf: localStorage,
        send: (event) => sendRunEvent(id, event),
        isRefusal: (thrown) => thrown instanceof FailedRequest,
        now: () => new Date(),
        onKept: (event) => holdRunEvent(queries, id, event),
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
    queryKey: runEventsKey(id),
    // what was kept while the answer was on its way stays
    queryFn: async () => {
      const events = await readRunEvents(id);
      return mergedEvents(queries.getQueryData<readonly RunEvent[]>(runEventsKey(id)), events);
    },
    staleTime: 0,
  });
  const kept = read.data;
  const log = useMemo(
    () => kept && deviceLog({ kept, unsent: held.unsent, device, aheadMs }),
    [kept, held.unsent, device, aheadMs],
  );
  const fold = useMemo(() => log && foldRun(log, plan?.plan ?? null), [log, plan]);
  const now = useNow();
  const state = useMemo(
    () => (fold ? runState({ run, work, plan, fold, now: new Date(now) }) : null),
    [run, work, plan, fold, now],
  );
  const last = useMemo(() => (log ? lastOwn(log, device) : null), [log, device]);
  const add = ({ kind, payload }: Pick<BenchTap, 'kind' | 'payload'>) =>
    outbox.add({
      clientId: newClientId(),
      kind,
      payload,
      at: new Date().toISOString(),
      actor: who,
      device,
    });
  return {
    state,
    events: log ?? [],
    last,
    outbox: held,
    failed: kept ? null : read.error,
    log: (...taps) => taps.forEach(add),
    undo: () => last && add({ kind: 'undo', payload: { clientId: last.clientId } }),
  };
}

/** The time of this device's clock, looked at again and again. */
function useNow(): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const look = () => setNow(Date.now());
    const looking = setInterval(look, lookMs);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(looking);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  return now;
}
