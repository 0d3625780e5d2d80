import './EtchView.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { listPlans, openPlan, planKey, plansKey } from '../../client/plans.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { etchedAlready } from '../../managers/etchedAlready.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { EtchBoard } from './EtchBoard.tsx';
import { EtchMinutes } from './EtchMinutes.tsx';
import { PlanChoicesForm } from './PlanChoicesForm.tsx';
import { PlanSide } from './PlanSide.tsx';
import { PlanTable } from './PlanTable.tsx';
import { planHeadline } from './planWords.ts';

import type { WorkDesk } from './useWorkDesk.ts';
import { WorkPage } from './WorkPage.tsx';

/** The first etch: its plan on the stone and beside it, row by row with its reasons, and as time for each person. */
export function EtchView({ desk }: { desk: WorkDesk }) {
  const { work } = desk;
  const [chosen, setChosen] = useState<string | null>(null);
  const [pointed, setPointed] = useState<string | null>(null);
  const plans = useQuery({ queryKey: plansKey(work.id), queryFn: () => listPlans(work.id) });
  const shownId = chosen ?? plans.data?.[0]?.id ?? null;
  const found = useQuery({
    queryKey: planKey(work.id, shownId ?? ''),
    queryFn: () => openPlan(work.id, shownId!),
    enabled: shownId !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const kept = shownId === null ? null : (found.data ?? null);
  const etched = etchedAlready(work.stage);
  const failed = plans.error ?? found.error;
  const opening = !failed && (plans.isPending || (shownId !== null && kept === null));
  return (
    <WorkPage
      work={work}
      headline={
        kept
          ? (etched?.headline ?? planHeadline(kept))
          : opening
            ? say('Opening the plan …')
            : say('The first etch is not planned yet')
      }
      board={<EtchBoard desk={desk} kept={kept} pointed={pointed} />}
      side={
        <>
          {failed && <FailureNotice failure={shownFailure(failed)} />}
          {kept && <PlanSide desk={desk} kept={kept} plans={plans.data ?? []} onChoose={setChosen} />}
          {plans.isSuccess && !opening && (
            <PlanChoicesForm key={kept?.id ?? 'first'} desk={desk} last={kept} onMade={setChosen} />
          )}
        </>
      }
      below={
        kept && (
          <>
            <PlanTable kept={kept} pointed={pointed} onPoint={setPointed} />
            <EtchMinutes kept={kept} />
          </>
        )
      }
    />
  );
}
