import { useState } from 'react';
import { FailedRequest, type ShownFailure, shownFailure } from '../client/shownFailure.ts';

/** A save on its way. */
export interface Saving<Entry> {
  readonly pending: boolean;
  readonly trouble: ShownFailure | null;
  /** Sends; answers the record as saved, or null where it was refused. `onStale` hears what is kept now. */
  readonly send: (task: () => Promise<Entry>, onStale?: (current: Entry) => void) => Promise<Entry | null>;
  readonly forget: () => void;
}

/** Sends saves and keeps what went wrong with the last one. */
export function useSaving<Entry>(): Saving<Entry> {
  const [pending, setPending] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  return {
    pending,
    trouble,
    forget: () => setTrouble(null),
    async send(task, onStale) {
      setPending(true);
      setTrouble(null);
      try {
        return await task();
      } catch (thrown) {
        setTrouble(shownFailure(thrown));
        if (thrown instanceof FailedRequest && thrown.failure.code === 'stale-save' && thrown.current)
          onStale?.(thrown.current as Entry);
        return null;
      } finally {
        setPending(false);
      }
    },
  };
}
