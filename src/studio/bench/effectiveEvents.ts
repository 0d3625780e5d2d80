import type { RunFact } from '../../records/bench.ts';
import type { RunEvent } from '../../records/run.ts';

/** The events that still count, in order, and what was taken back. */
export interface EffectiveEvents {
  readonly events: readonly RunEvent[];
  readonly facts: readonly RunFact[];
}

/**
 * Takes back what later events undo. Undoing an undo restores what it took back. Undoing what is not there, or what
 * came later, changes nothing and is said.
 */
export function effectiveEvents(all: readonly RunEvent[]): EffectiveEvents {
  const undoneBy = new Map<string, RunEvent>();
  const events: RunEvent[] = [];
  const facts: RunFact[] = [];
  for (let index = all.length - 1; index >= 0; index--) {
    const event = all[index]!;
    if (undoneBy.delete(event.clientId)) {
      facts.push({ fact: 'undone', sequence: event.sequence, words: `${event.kind} was taken back` });
    } else if (event.kind === 'undo') {
      undoneBy.set(event.payload.clientId, event);
    } else {
      events.push(event);
    }
  }
  for (const { sequence } of undoneBy.values()) {
    facts.push({ fact: 'undo-of-nothing', sequence, words: 'there was nothing of that id to take back' });
  }
  return { events: events.reverse(), facts: facts.reverse() };
}
