import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { ScheduleChange } from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { makePlan, planKey, plansKey } from '../../client/plans.ts';
import { runsKey } from '../../client/runs.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { choicesWith } from '../../managers/planChoices.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { changeTitles, feasibleWords } from './planWords.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** A change that would help a plan, what it would do, and taking it up; what can't help is told without. */
export function OfferedChange({
  offered: { change, feasible, effect },
  kept,
  desk,
  onMade,
}: {
  offered: ScheduleChange;
  kept: KeptPlan;
  desk: Pick<WorkDesk, 'unsaved' | 'save'>;
  onMade: (id: string) => void;
}) {
  const queries = useQueryClient();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const choices = choicesWith(kept, change);
  const take = async () => {
    setBusy(true);
    setTrouble(null);
    try {
      if (desk.unsaved && !(await desk.save())) return;
      const made = await makePlan(kept.workId, choices!);
      queries.setQueryData(planKey(kept.workId, made.id), made);
      void queries.invalidateQueries({ queryKey: runsKey(kept.workId) });
      await queries.invalidateQueries({ queryKey: plansKey(kept.workId) });
      onMade(made.id);
      window.scrollTo({ top: 0 });
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setBusy(false);
    }
  };
  return (
    <li>
      <b>
        {changeTitles[change]}: {feasibleWords(feasible)}.
      </b>{' '}
      {told(effect)}
      {trouble && <FailureNotice failure={trouble} />}
      {feasible !== false && (
        <div className="plan-change">
          {choices ? (
            <Button kind="plain" disabled={busy} onClick={() => void take()}>
              {busy ? say('Planning …') : planItSo[change]}
            </Button>
          ) : (
            <ButtonLink kind="plain" href={`/works/${kept.workId}`}>
              {planItSo[change]}
            </ButtonLink>
          )}
        </div>
      )}
    </li>
  );
}

const planItSo: Readonly<Record<ScheduleChange['change'], string>> = {
  'second-person': say('Plan it for two'),
  merge: say('Draw them as one zone'),
  'deeper-film': say('Plan it with the deeper film'),
  'two-stages': say('Plan it in two stages'),
};
