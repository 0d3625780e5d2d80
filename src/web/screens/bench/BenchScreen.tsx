import './BenchScreen.css';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { openPlan, planKey } from '../../client/plans.ts';
import { openRun, runKey } from '../../client/runs.ts';
import { FailedRequest, shownFailure } from '../../client/shownFailure.ts';
import { openWork, workKey } from '../../client/works.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { NotFound } from '../NotFound.tsx';
import { Bench } from './Bench.tsx';

/** The bench of one run: what to touch now, and logging it. */
export default function BenchScreen({ id }: { id: string }) {
  const found = useQuery({
    queryKey: runKey(id),
    queryFn: async () => {
      const asked = Date.now();
      const run = await openRun(id);
      // the answer's time is that of the middle between asking and hearing
      return { run, aheadMs: Date.parse(run.at) - (asked + Date.now()) / 2 };
    },
    staleTime: Number.POSITIVE_INFINITY,
    refetchOnReconnect: false,
  });
  const run = found.data?.run;
  const work = useQuery({
    queryKey: workKey(run?.workId ?? ''),
    queryFn: () => openWork(run!.workId),
    enabled: run !== undefined,
  });
  const plan = useQuery({
    queryKey: planKey(run?.workId ?? '', run?.planId ?? ''),
    queryFn: () => openPlan(run!.workId, run!.planId!),
    enabled: run !== undefined && run.planId !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const failed = found.data && work.data && plan.data ? null : (found.error ?? work.error ?? plan.error);
  if (failed instanceof FailedRequest && failed.failure.code === 'not-found') return <NotFound />;
  if (failed) {
    const { message, remedy } = shownFailure(failed);
    return (
      <BenchWords headline="This run could not be opened">
        <Notice kind="trouble" title={message}>
          {remedy}
        </Notice>
      </BenchWords>
    );
  }
  if (run && (run.planId === null || plan.data?.plan.schedule.steps.length === 0)) {
    return (
      <BenchWords headline="This run has no order to keep">
        <p>Without a plan whose times can be kept there is nothing to call out. Plan the first etch anew.</p>
        <ButtonLink kind="act" href={`/works/${run.workId}/etch`}>
          To the first etch
        </ButtonLink>
      </BenchWords>
    );
  }
  if (!found.data || !work.data || !plan.data) return <p className="unseen">Opening …</p>;
  return <Bench run={found.data.run} aheadMs={found.data.aheadMs} work={work.data} kept={plan.data} />;
}

function BenchWords({ headline, children }: { headline: string; children: ReactNode }) {
  return (
    <div className="bench-words">
      <h1 className="big">{headline}</h1>
      {children}
    </div>
  );
}
