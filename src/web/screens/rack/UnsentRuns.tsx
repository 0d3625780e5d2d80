import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { RunOutbox } from '../../managers/bench/runOutbox.ts';
import { unsentRuns } from '../../managers/bench/unsentRuns.ts';
import { Notice } from '../../parts/Notice.tsx';
import { runOutboxOf } from './runOutboxOf.ts';

/** How often what is unsent is tried again, ms. */
const againMs = 2000;

/** Sends what pages of this browser logged that were closed before it was sent, and says how much is left. */
export function UnsentRuns() {
  const queries = useQueryClient();
  const [outboxes] = useState((): readonly RunOutbox[] =>
    unsentRuns(localStorage).map((run) => runOutboxOf(queries, run)),
  );
  const [left, setLeft] = useState(0);
  useEffect(() => {
    let stopped = false;
    const drain = async () => {
      await Promise.all(outboxes.map((outbox) => outbox.drain()));
      if (stopped) return;
      setLeft(outboxes.reduce((sum, outbox) => sum + outbox.current().unsent.length, 0));
    };
    void drain();
    if (outboxes.length === 0) return;
    const again = setInterval(() => void drain(), againMs);
    return () => {
      stopped = true;
      clearInterval(again);
    };
  }, [outboxes]);
  if (left === 0) return null;
  return (
    <div className="list-foot">
      <Notice kind="caution" title={`${left} logged here ${left === 1 ? 'is' : 'are'} not sent yet.`}>
        The rack does not know of {left === 1 ? 'it' : 'them'}. Kept here, sent in order as soon as Stonetone
        answers.
      </Notice>
    </div>
  );
}
