import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { LogToSend } from '../../managers/bench/logToSend.ts';
import { unsentLogs } from '../../managers/held/tapShelf.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { UnsentPulls } from '../held/UnsentPulls.tsx';
import { ledgerToSendOf, runToSendOf } from './runToSendOf.ts';

/** How often what is unsent is tried again, ms. */
const againMs = 2000;

interface Waiting {
  readonly count: number;
  /** Whether Stonetone answered and took it not: waiting alone won't mend it. */
  readonly refused: boolean;
}

/** Sends what pages of this browser logged that were closed before it was sent, and says how much is left. */
export function UnsentRuns() {
  const queries = useQueryClient();
  const [left, setLeft] = useState<Waiting>({ count: 0, refused: false });
  useEffect(() => {
    const allToSend = new Map<string, Pick<LogToSend, 'drain'> & { current(): Pending }>();
    let stopped = false;
    const drain = async () => {
      // another page may log meanwhile; one that keeps nothing has nothing to send
      const logs = await unsentLogs().catch(() => []);
      for (const { log, of } of logs) {
        if (!allToSend.has(log))
          allToSend.set(log, of === 'run' ? runToSendOf(queries, log) : ledgerToSendOf(queries, log));
      }
      await Promise.all([...allToSend.values()].map((toSend) => toSend.drain()));
      if (stopped) return;
      const views = [...allToSend.values()].map((toSend) => toSend.current());
      setLeft({
        count: views.reduce((sum, { unsent }) => sum + unsent.length, 0),
        refused: views.some(({ unsent, state }) => unsent.length > 0 && state === 'refused'),
      });
    };
    void drain();
    const again = setInterval(() => void drain(), againMs);
    return () => {
      stopped = true;
      clearInterval(again);
    };
  }, [queries]);
  const { count, refused } = left;
  return (
    <div className="list-foot">
      <UnsentPulls />
      <UnsentPhotographs />
      {count > 0 && (
        <Notice
          kind="caution"
          title={say(
            '{count, plural, one {# thing logged here is} other {# things logged here are}} not sent yet.',
            { count },
          )}
        >
          {refused
            ? say('Stonetone does not take it. It stays here: open the bench or press where it was logged.')
            : say('The rack does not know of it. Kept here, sent in order as soon as Stonetone answers.')}
        </Notice>
      )}
    </div>
  );
}

interface Pending {
  readonly unsent: { readonly length: number };
  readonly state: string;
}
