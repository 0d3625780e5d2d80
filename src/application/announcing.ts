/** One place where changes of one sort are told and heard. */
export interface Announcer<Event> {
  /** Tells everybody who listens. */
  announce(event: Event): void;
  /** Hears every change from now on; returns what ends it. */
  subscribe(listener: (event: Event) => void): () => void;
}

/** Listeners are told in the order in which they came; what none listens to is told to nobody. */
export function createAnnouncer<Event>(): Announcer<Event> {
  const listeners = new Set<(event: Event) => void>();
  return {
    announce(event) {
      for (const listener of listeners) listener(event);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}
