import type { RunFact } from '../../records/bench.ts';
import type { RunEvent } from '../../records/run.ts';

/** When an event happened, ms on the server's time line, and which clock it was read from. */
export interface Moment {
  readonly ms: number;
  /** Equal for events whose distance one clock measured. */
  readonly clock: number;
}

/** A clock as far as a log tells of it; plain, so that it can be kept. */
export interface Clock {
  readonly device: string;
  /** Sequence number of the first event that was read from it. */
  readonly from: number;
  /** What to add to this clock to get the server's time, ms: the least that was seen, since sending only delays. */
  offset: number;
  /** The same where the device said when it sent. */
  sentOffset: number | null;
  lastAt: number;
  /** Whether something of it was sent so late that it was told. */
  late: boolean;
}

/** Events with their moments, and the clocks that they were read from. */
export interface ClocksRead {
  readonly moments: ReadonlyMap<number, Moment>;
  readonly clocks: readonly Clock[];
  /** Clocks that were set, and what was sent late. */
  readonly facts: readonly RunFact[];
  /** Whether a clock that was known before is read otherwise now: what was placed by it stands elsewhere then. */
  readonly moved: boolean;
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
  const { moments, clocks, facts } = readClocks(events);
  return { moments, facts: [...facts, ...clocks.flatMap(wrongClock)] };
}

/**
 * The same, going on where a log was read to.
 * @param events those after that, in order of their sequence numbers
 * @param before the clocks that the log told of until then; they stay as they are
 */
export function readClocks(events: readonly RunEvent[], before: readonly Clock[] = []): ClocksRead {
  const clocks = before.map((clock) => ({ ...clock }));
  const facts: RunFact[] = [];
  // the newest clock of a device is the one it goes by
  const current = new Map(clocks.map(({ device }, index) => [device, index]));
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
      const from = event.sequence;
      clocks.push({ device, from, offset: received - at, sentOffset: sent, lastAt: at, late: false });
    } else {
      clock.offset = Math.min(clock.offset, received - at);
      if (sent !== null) clock.sentOffset = Math.min(clock.sentOffset ?? sent, sent);
      clock.lastAt = at;
    }
    read.push({ sequence: event.sequence, at, received, clock: index! });
  }
  const moments = new Map<number, Moment>();
  for (const { sequence, at, received, clock: index } of read) {
    const clock = clocks[index]!;
    const ms = Math.min(received, at + offsetOf(clock));
    moments.set(sequence, { ms, clock: index });
    if (received - ms > toldMs && !clock.late) {
      clock.late = true;
      facts.push({ fact: 'sent-late', sequence, words: `${clock.device} sent some of this later` });
    }
  }
  const moved = before.some((clock, index) => offsetOf(clock) !== offsetOf(clocks[index]!));
  return { moments, clocks, facts, moved };
}

function offsetOf({ offset, sentOffset }: Clock): number {
  return sentOffset ?? offset;
}

function wasSet(clock: Clock, at: number, sent: number | null): boolean {
  if (sent !== null && clock.sentOffset !== null) return Math.abs(sent - clock.sentOffset) > sendingMs;
  return at < clock.lastAt - stumbleMs;
}

/** What is told of a clock that is far off. */
export function wrongClock(clock: Clock): RunFact[] {
  const { device, from, sentOffset } = clock;
  const off = offsetOf(clock);
  if (Math.abs(off) <= toldMs) return [];
  const minutes = Math.round(Math.abs(off) / 60_000);
  const by = minutes < 120 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
  // without the moment of sending, a clock that is behind can't be told from one that sent everything later
  const what = off < 0 ? 'is ahead' : sentOffset === null ? 'is behind, or all was sent later,' : 'is behind';
  const words = `the clock of ${device} ${what} by ${by}; its durations stand, the hour is the server’s`;
  return [{ fact: 'clock-wrong', sequence: from, words }];
}
