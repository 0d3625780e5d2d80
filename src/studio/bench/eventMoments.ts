import type { RunFact } from '../../records/bench.ts';
import type { RunEvent } from '../../records/run.ts';

/** When an event happened, ms on the server's time line, and which clock it was read from. */
export interface Moment {
  readonly ms: number;
  /** Equal for events whose distance one clock measured. */
  readonly clock: number;
}

interface Clock {
  readonly device: string;
  readonly from: number;
  /** What to add to this clock to get the server's time, ms: the least that was seen, since sending only delays. */
  offset: number;
  /** The same where the device said when it sent. */
  sentOffset: number | null;
  lastAt: number;
}

/** A clock may stumble by so much, ms, before it counts as set. Our rule. */
const stumbleMs = 1000;
/** Sending takes less than this, ms; a greater change of a clock's offset means that it was set. Our rule. */
const sendingMs = 10_000;
/** A clock that is further off than this, ms, is told of, as is what was sent later than this. Our rule. */
const toldMs = 120_000;

/**
 * Places events on the server's time line. Within a device its own clock measures, however wrong it stands; the
 * server's time says when. A clock that was set in between counts as another clock from there on.
 * @param events in order of their sequence numbers, those that were taken back too
 */
export function eventMoments(events: readonly RunEvent[]): {
  readonly moments: ReadonlyMap<number, Moment>;
  readonly facts: readonly RunFact[];
} {
  const clocks: Clock[] = [];
  const facts: RunFact[] = [];
  const current = new Map<string, number>();
  const read: { readonly sequence: number; readonly at: number; readonly received: number; clock: number }[] =
    [];
  for (const event of events) {
    const device = event.device ?? (event.actor === null ? 'a device' : `the device of ${event.actor}`);
    const at = Date.parse(event.at);
    const received = Date.parse(event.receivedAt);
    const sent = event.sentAt === null ? null : received - Date.parse(event.sentAt);
    let index = current.get(device);
    const clock = index === undefined ? undefined : clocks[index];
    if (clock === undefined || wasSet(clock, at, sent)) {
      if (clock) {
        const words = `the clock of ${device} was set; times across that are the server’s`;
        facts.push({ fact: 'clock-set', sequence: event.sequence, words });
      }
      index = clocks.length;
      current.set(device, index);
      clocks.push({ device, from: event.sequence, offset: received - at, sentOffset: sent, lastAt: at });
    } else {
      clock.offset = Math.min(clock.offset, received - at);
      if (sent !== null) clock.sentOffset = Math.min(clock.sentOffset ?? sent, sent);
      clock.lastAt = at;
    }
    read.push({ sequence: event.sequence, at, received, clock: index! });
  }
  const moments = new Map<number, Moment>();
  const late = new Set<number>();
  for (const { sequence, at, received, clock } of read) {
    const { offset, sentOffset, device } = clocks[clock]!;
    const ms = Math.min(received, at + (sentOffset ?? offset));
    moments.set(sequence, { ms, clock });
    if (received - ms > toldMs && !late.has(clock)) {
      late.add(clock);
      facts.push({ fact: 'sent-late', sequence, words: `${device} sent some of this later` });
    }
  }
  for (const clock of clocks) facts.push(...wrongClock(clock));
  return { moments, facts };
}

function wasSet(clock: Clock, at: number, sent: number | null): boolean {
  if (sent !== null && clock.sentOffset !== null) return Math.abs(sent - clock.sentOffset) > sendingMs;
  return at < clock.lastAt - stumbleMs;
}

function wrongClock({ device, from, offset, sentOffset }: Clock): RunFact[] {
  const off = sentOffset ?? offset;
  if (Math.abs(off) <= toldMs) return [];
  const minutes = Math.round(Math.abs(off) / 60_000);
  const by = minutes < 120 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
  // without the moment of sending, a clock that is behind can't be told from one that sent everything later
  const what = off < 0 ? 'is ahead' : sentOffset === null ? 'is behind, or all was sent later,' : 'is behind';
  const words = `the clock of ${device} ${what} by ${by}; its durations stand, the hour is the server’s`;
  return [{ fact: 'clock-wrong', sequence: from, words }];
}
