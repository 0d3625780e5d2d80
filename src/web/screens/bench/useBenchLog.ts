import { useQueryClient } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { RunState } from '../../../records/bench.ts';
import type { KeptPlan, KeptSecondEtch } from '../../../records/keptPlan.ts';
import type { RunEvent } from '../../../records/run.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { foldRun } from '../../../studio/bench/foldRun.ts';
import { runState } from '../../../studio/bench/runState.ts';
import { holdRunEvent, mergedEvents, readRunEvents, runEventsKey, sendRunEvent } from '../../client/runs.ts';
import type { BenchTap } from '../../managers/bench/benchTaps.ts';
import { deviceLog, lastOwn } from '../../managers/bench/deviceLog.ts';
import type { ToSendView, UnsentEvent } from '../../managers/bench/logToSend.ts';
import { useClock } from './useClock.ts';
import { useSentLog } from './useSentLog.ts';

/** How often the screen looks at the clock, ms; no time is counted by it. */
const lookMs = 200;

export interface BenchLog {
  /** The run as it stands now; null until its log is read. */
  readonly state: RunState | null;
  /** All that counts and all that was taken back, in order, sent or not; empty until it is read. */
  readonly events: readonly RunEvent[];
  /** The last event of this device that still counts. */
  readonly last: RunEvent | null;
  readonly toSend: ToSendView;
  readonly failed: unknown;
  /** When this device last heard the log, ms since 1970, where the server is out of reach since the page opened. */
  readonly heldSince: number | null;
  log(...taps: readonly Pick<BenchTap, 'kind' | 'payload'>[]): void;
  undo(): void;
}

export interface BenchLogInput {
  readonly run: RunState;
  readonly work: WorkEntry;
  readonly plan: KeptPlan | null;
  /** Plans of its second etches, newest first. */
  readonly second: readonly KeptSecondEtch[];
  /** How far the server's clock is ahead of this device's, ms. */
  readonly aheadMs: number;
  /** Whose hands are logged; null where nobody said. */
  readonly who: string | null;
}

/** The log of a run as this device sees it, sent or not, and adding to it. */
export function useBenchLog({ run, work, plan, second, aheadMs, who }: BenchLogInput): BenchLog {
  const queries = useQueryClient();
  const { id } = run;
  const { kept, toSend, device, failed, heldSince, add } = useSentLog<UnsentEvent, RunEvent>({
    of: 'run',
    id,
    queryKey: runEventsKey(id),
    read: () => readRunEvents(id),
    merged: mergedEvents,
    send: (event) => sendRunEvent(id, event),
    onKept: (event) => holdRunEvent(queries, id, event),
  });
  const log = useMemo(
    () => kept && deviceLog({ kept, unsent: toSend.unsent, device, aheadMs }),
    [kept, toSend.unsent, device, aheadMs],
  );
  const planned = useMemo(
    () => ({ first: plan?.plan ?? null, seconds: second.map((one) => onThisClock(one, aheadMs)) }),
    [plan, second, aheadMs],
  );
  const fold = useMemo(() => log && foldRun(log, planned), [log, planned]);
  const press = useMemo(
    () => (run.press ? { ...run.press, at: onClock(run.press.at, aheadMs) } : null),
    [run.press, aheadMs],
  );
  const now = useClock(lookMs);
  const state = useMemo(
    () => (fold ? runState({ run, work, plan, fold, press, now: new Date(now) }) : null),
    [run, work, plan, fold, press, now],
  );
  const last = useMemo(() => (log ? lastOwn(log, device) : null), [log, device]);
  return {
    state,
    events: log ?? [],
    last,
    toSend,
    failed,
    heldSince,
    log: (...taps) => {
      for (const { kind, payload } of taps) add({ kind, payload }, who);
    },
    undo: () => last && add({ kind: 'undo', payload: { clientId: last.clientId } }, who),
  };
}

/** When a plan was made, by this device's clock, which the log that it shows goes by. */
function onThisClock(second: KeptSecondEtch, aheadMs: number): KeptSecondEtch {
  return { ...second, createdAt: onClock(second.createdAt, aheadMs) };
}

function onClock(at: string, aheadMs: number): string {
  return new Date(Date.parse(at) - aheadMs).toISOString();
}
