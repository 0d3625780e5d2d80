import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { listRuns, runsKey, startRun } from '../../client/runs.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { newClientId } from '../../managers/bench/clientIds.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';

/** The way from a work to its bench, planned or not: to the newest run, or to one that begins now. */
export function ToTheBench({ work, kind = 'plain' }: { work: WorkEntry; kind?: 'act' | 'plain' }) {
  const [, goTo] = useLocation();
  const queries = useQueryClient();
  const runs = useQuery({ queryKey: runsKey(work.id), queryFn: () => listRuns(work.id), staleTime: 0 });
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [busy, setBusy] = useState(false);
  // an answer that got lost is asked for again: one press, one run
  const clientId = useRef<string | null>(null);
  const begin = async () => {
    setBusy(true);
    setTrouble(null);
    clientId.current ??= newClientId();
    try {
      const { id } = await startRun(work.id, null, clientId.current);
      void queries.invalidateQueries({ queryKey: runsKey(work.id) });
      goTo(`/bench/${id}`);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
      setBusy(false);
    }
  };
  const newest = runs.data?.[0];
  const words = say('Go to the bench');
  return (
    <div className="work-bench">
      {trouble && <FailureNotice failure={trouble} />}
      {newest ? (
        <ButtonLink kind={kind} href={`/bench/${newest.id}`}>
          {words}
        </ButtonLink>
      ) : (
        <Button kind={kind} disabled={busy || runs.isPending || work.putBy} onClick={() => void begin()}>
          {words}
        </Button>
      )}
      {!newest && work.putBy && <p className="soft">{say('It is put by: bring it back first.')}</p>}
    </div>
  );
}
