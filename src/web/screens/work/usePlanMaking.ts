import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { PlanChoices } from '../../../records/keptPlan.ts';
import { makePlan, planKey, plansKey } from '../../client/plans.ts';
import { runsKey } from '../../client/runs.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** Making a plan of a work, whose drawing is saved first; `onMade` is told the plan's id. */
export function usePlanMaking(
  workId: string,
  desk: Pick<WorkDesk, 'unsaved' | 'save'>,
  onMade: (id: string) => void,
) {
  const queries = useQueryClient();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const make = async (choices: PlanChoices) => {
    setBusy(true);
    setTrouble(null);
    try {
      if (desk.unsaved && !(await desk.save())) return;
      const made = await makePlan(workId, choices);
      queries.setQueryData(planKey(workId, made.id), made);
      void queries.invalidateQueries({ queryKey: runsKey(workId) });
      await queries.invalidateQueries({ queryKey: plansKey(workId) });
      onMade(made.id);
      window.scrollTo({ top: 0 });
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setBusy(false);
    }
  };
  return { make, busy, trouble };
}
