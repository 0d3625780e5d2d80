import './BenchScreen.css';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { useSearch } from 'wouter';
import { heardOrHeld } from '../../client/heardOrHeld.ts';
import { listSecondEtches, openPlan, planKey, secondEtchesKey } from '../../client/plans.ts';
import { openRun, runKey } from '../../client/runs.ts';
import { FailedRequest, shownFailure } from '../../client/shownFailure.ts';
import { openWork, workKey } from '../../client/works.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { NotFound } from '../NotFound.tsx';
import { Bench } from './Bench.tsx';

/** What the address says where a run is begun from the first etch's plan. */
const firstEtchWanted = 'first-etch';

/** The bench of one run: what to touch now, and logging it. */
export default function BenchScreen({ id }: { id: string }) {
  const search = useSearch();
  const found = useQuery({
    queryKey: runKey(id),
    queryFn: () =>
      heldValue(`run ${id}`, async () => {
        const asked = Date.now();
        const run = await openRun(id);
        // the answer's time is that of the middle between asking and hearing
        return { run, aheadMs: Date.parse(run.at) - (asked + Date.now()) / 2 };
      }),
    staleTime: Number.POSITIVE_INFINITY,
    refetchOnReconnect: false,
    networkMode: 'always',
  });
  const run = found.data?.run;
  const work = useQuery({
    queryKey: workKey(run?.workId ?? ''),
    queryFn: () => heldValue(`work ${run!.workId}`, () => openWork(run!.workId)),
    networkMode: 'always',
    enabled: run !== undefined,
  });
  const plan = useQuery({
    queryKey: planKey(run?.workId ?? '', run?.planId ?? ''),
    queryFn: () => heldValue(`plan ${run!.planId}`, () => openPlan(run!.workId, run!.planId!)),
    networkMode: 'always',
    enabled: run !== undefined && run.planId !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const second = useQuery({
    queryKey: secondEtchesKey(run?.workId ?? ''),
    queryFn: () => heldValue(`second-etches ${run!.workId}`, () => listSecondEtches(run!.workId)),
    networkMode: 'always',
    enabled: run !== undefined,
  });
  const read = found.data && work.data && (found.data.run.planId === null || plan.data);
  const failed = read ? null : (found.error ?? work.error ?? plan.error);
  if (failed instanceof FailedRequest && failed.failure.code === 'not-found') return <NotFound />;
  if (failed) {
    const { message, remedy } = shownFailure(failed);
    return (
      <BenchWords headline={say('This run could not be opened')}>
        <Notice kind="trouble" title={message}>
          {remedy}
        </Notice>
      </BenchWords>
    );
  }
  const planned = run === undefined || run.planId === null || plan.data !== undefined;
  if (!found.data || !work.data || !planned || second.isPending)
    return <p className="unseen">{say('Opening …')}</p>;
  return (
    <Bench
      run={found.data.run}
      aheadMs={found.data.aheadMs}
      work={work.data}
      kept={plan.data ?? null}
      second={second.data ?? []}
      etchWanted={search === firstEtchWanted}
    />
  );
}

/** What the server answers, or last answered: the bench says by its log how old that is. */
async function heldValue<T>(key: string, ask: () => Promise<T>): Promise<T> {
  return (await heardOrHeld(key, ask)).value;
}

function BenchWords({ headline, children }: { headline: string; children: ReactNode }) {
  return (
    <div className="bench-words">
      <h1 className="big">{headline}</h1>
      {children}
    </div>
  );
}
