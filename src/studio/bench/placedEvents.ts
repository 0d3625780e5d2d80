import type { RunFact } from '../../records/bench.ts';
import type { RunEvent } from '../../records/run.ts';
import { effectiveEvents } from './effectiveEvents.ts';
import { type Clock, type ClocksRead, type Moment, readClocks } from './eventMoments.ts';

/** An event that counts, with its place on the server's time line. */
export interface PlacedEvent {
  readonly event: RunEvent;
  readonly moment: Moment;
}

/** A log ready to be read: what was undone is out, and the rest stands in the order in which it happened. */
export interface ReadLog extends Pick<ClocksRead, 'clocks' | 'moved'> {
  readonly placed: readonly PlacedEvent[];
  readonly facts: { readonly clocks: readonly RunFact[]; readonly takenBack: readonly RunFact[] };
}

/**
 * @param events all of a run, in order of their sequence numbers; or those after where it was read to
 * @param before the clocks that it told of until then
 */
export function readLog(events: readonly RunEvent[], before: readonly Clock[] = []): ReadLog {
  const { moments, clocks, moved, facts } = readClocks(events, before);
  const effective = effectiveEvents(events);
  const placed = effective.events.map((event) => ({ event, moment: moments.get(event.sequence)! }));
  // what was kept first stands first where two happened at one moment
  placed.sort((a, b) => a.moment.ms - b.moment.ms || a.event.sequence - b.event.sequence);
  return { placed, clocks, moved, facts: { clocks: facts, takenBack: effective.facts } };
}

/** A moment as ISO 8601. */
export function isoOf({ ms }: Moment): string {
  return new Date(ms).toISOString();
}
