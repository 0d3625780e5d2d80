import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { addPull, holdPull } from '../../client/pulls.ts';
import { FailedRequest, type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { heldIdOf } from '../../managers/held/heldName.ts';
import { draftOfTyped, type PullTyped } from '../../managers/proofs/pullDraft.ts';
import { heldPulls } from '../held/heldPulls.ts';
import { sendHeld } from '../held/sendHeld.ts';

/** Keeps a pull that was entered to its end: by the server, or on this device until the server has it. */
export function useKeepPull(work: WorkEntry): {
  readonly pending: boolean;
  readonly trouble: ShownFailure | null;
  /** Where it is kept now; null: nowhere, `trouble` says why. */
  readonly keep: (typed: PullTyped) => Promise<'kept' | 'held' | null>;
} {
  const queries = useQueryClient();
  const [pending, setPending] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const hold = async (typed: PullTyped, enteredAt: string) => {
    const pull = { workId: work.id, workTitle: work.title, typed, enteredAt };
    if (await heldPulls(queries).hold(pull)) {
      void sendHeld(queries);
      return 'held';
    }
    setTrouble(shownFailure(null));
    return null;
  };
  const keep = async (typed: PullTyped) => {
    const now = new Date().toISOString();
    const unsent = typed.photographs.some(({ photograph }) => heldIdOf(photograph) !== null);
    if (unsent || !navigator.onLine) return hold(typed, now);
    try {
      const entry = await addPull(work.id, { ...draftOfTyped(typed, now)!, id: typed.id });
      holdPull(queries, entry);
      return 'kept';
    } catch (thrown) {
      if (!(thrown instanceof FailedRequest)) return hold(typed, now);
      setTrouble(thrown.failure);
      return null;
    }
  };
  return {
    pending,
    trouble,
    async keep(typed) {
      setPending(true);
      setTrouble(null);
      try {
        return await keep(typed);
      } finally {
        setPending(false);
      }
    },
  };
}
