import type { ComparisonState, MeasuringProgress } from '../../records/comparisonEntry.ts';

/** Something about one comparison changed. */
export interface ComparisonEvent {
  readonly id: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
}

export interface ComparisonEvents {
  /** Tells everybody who listens. */
  announce(event: ComparisonEvent): void;
  /** Hears every change from now on; returns what ends it. */
  subscribe(listener: (event: ComparisonEvent) => void): () => void;
}

/** The one place where changes of comparisons are told and heard. */
export function createComparisonEvents(): ComparisonEvents {
  const listeners = new Set<(event: ComparisonEvent) => void>();
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
