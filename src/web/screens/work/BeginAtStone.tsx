import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { listRuns, runsKey, startRun } from '../../client/runs.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { newClientId } from '../../managers/bench/clientIds.ts';
import { etchedAlready } from '../../managers/etchedAlready.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { ToTheBench } from './ToTheBench.tsx';

/**
 * Begins a run of a plan and goes to the bench, or goes back to the run that was begun. A stone that was etched goes on
 * with the line; etching it again is asked for in words.
 */
export function BeginAtStone({ kept, work }: { kept: KeptPlan; work: WorkEntry }) {
  const [, goTo] = useLocation();
  const queries = useQueryClient();
  const runs = useQuery({
    queryKey: runsKey(kept.workId),
    queryFn: () => listRuns(kept.workId),
    staleTime: 0,
  });
  const begun = runs.data?.find(({ planId }) => planId === kept.id) ?? null;
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [busy, setBusy] = useState(false);
  const [asking, setAsking] = useState(false);
  const etched = etchedAlready(work.stage);
  // an answer that got lost is asked for again: one press, one run
  const clientId = useRef<string | null>(null);
  const begin = async () => {
    setBusy(true);
    setTrouble(null);
    clientId.current ??= newClientId();
    try {
      const { id } = await startRun(kept.workId, kept.id, clientId.current);
      void queries.invalidateQueries({ queryKey: runsKey(kept.workId) });
      goTo(`/bench/${id}?first-etch`);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
      setBusy(false);
    }
  };
  if (etched) {
    return (
      <div className="plan-begin">
        {trouble && (
          <Notice kind="trouble" title={trouble.message}>
            {trouble.remedy}
          </Notice>
        )}
        <p>
          {asking
            ? say('This stone was etched already: etch it again, from this plan?')
            : begun
              ? say('Begun from this plan {day}, and etched. Next in the line: {next}.', {
                  day: dayWords(begun.startedAt),
                  next: etched.next,
                })
              : say('This stone was etched already. Next in the line: {next}.', { next: etched.next })}
        </p>
        {!asking &&
          (begun ? (
            <ButtonLink kind="act" href={`/bench/${begun.id}`}>
              {say('Back to the bench')}
            </ButtonLink>
          ) : (
            <ToTheBench work={work} kind="act" />
          ))}
        <Button disabled={busy || runs.isPending} onClick={() => (asking ? void begin() : setAsking(true))}>
          {asking ? say('Yes, etch it again') : say('Etch it again')}
        </Button>
        {asking && <Button onClick={() => setAsking(false)}>{say('No, leave it')}</Button>}
      </div>
    );
  }
  return (
    <div className="plan-begin">
      {trouble && (
        <Notice kind="trouble" title={trouble.message}>
          {trouble.remedy}
        </Notice>
      )}
      {begun && (
        <ButtonLink kind="act" href={`/bench/${begun.id}`}>
          {say('Back to the bench')}
        </ButtonLink>
      )}
      <Button kind={begun ? 'plain' : 'act'} disabled={busy || runs.isPending} onClick={() => void begin()}>
        {begun ? say('Begin another run of it') : say('Begin at the stone')}
      </Button>
    </div>
  );
}
