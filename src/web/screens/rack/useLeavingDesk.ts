import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState, useSyncExternalStore } from 'react';
import type { LeavingList } from '../../../records/rack.ts';
import { beginRun } from '../../client/rack.ts';
import { deviceName, newClientId } from '../../managers/bench/clientIds.ts';
import { LeavingDesk } from '../../managers/leavingDesk.ts';
import { runToSendOf } from './runToSendOf.ts';

/** How often what is unsent is tried again, ms. */
const againMs = 2000;

/** Ticking off one list before leaving, and sending what was ticked. */
export function useLeavingDesk(list: LeavingList) {
  const queries = useQueryClient();
  const [desk] = useState(
    () =>
      new LeavingDesk(list, {
        toSendOf: (runId) => runToSendOf(queries, runId),
        begin: async (workId, clientId) => (await beginRun(workId, clientId)).id,
        newClientId,
        device: deviceName(localStorage),
        now: () => new Date(),
        shelf: sessionStorage,
      }),
  );
  useEffect(() => {
    const drain = () => desk.drain();
    drain();
    const again = setInterval(drain, againMs);
    addEventListener('online', drain);
    return () => {
      clearInterval(again);
      removeEventListener('online', drain);
    };
  }, [desk]);
  return { desk, view: useSyncExternalStore(desk.listen, desk.current) };
}
