import type { RunEvent } from '../../../records/run.ts';
import { eventMoments } from '../../../studio/bench/eventMoments.ts';
import type { UnsentEvent } from './logToSend.ts';

export interface DeviceLogInput {
  /** Those that the server kept, in order. */
  readonly kept: readonly RunEvent[];
  readonly unsent: readonly UnsentEvent[];
  /** What this device is called in the log. */
  readonly device: string;
  /** How far the server's clock is ahead of this device's, ms. */
  readonly aheadMs: number;
}

/**
 * A run's log on the time line of the device that shows it, so that its own clock measures its own taps, sent or not,
 * however wrong it stands. Times of other devices are taken from the server and moved to this clock.
 */
export function deviceLog({ kept, unsent, device, aheadMs }: DeviceLogInput): readonly RunEvent[] {
  const { moments } = eventMoments(kept);
  const known = new Set(kept.map(({ clientId }) => clientId));
  const last = kept.at(-1)?.sequence ?? 0;
  const placed = kept.map((event): RunEvent => {
    if (event.device === device) return { ...event, sentAt: null, receivedAt: event.at };
    const at = new Date(moments.get(event.sequence)!.ms - aheadMs).toISOString();
    return { ...event, at, sentAt: null, receivedAt: at };
  });
  const waiting = unsent
    .filter(({ clientId }) => !known.has(clientId))
    .map(
      (event, index) =>
        ({ ...event, sequence: last + index + 1, sentAt: null, receivedAt: event.at }) as RunEvent,
    );
  return [...placed, ...waiting];
}

/** The last of this device's events that still counts and can be taken back; null where there is none. */
export function lastOwn(log: readonly RunEvent[], device: string): RunEvent | null {
  const undone = new Set<string>();
  for (const event of log.toReversed()) {
    if (event.device !== device || undone.has(event.clientId)) continue;
    if (event.kind !== 'undo') return event;
    undone.add(event.payload.clientId);
  }
  return null;
}
