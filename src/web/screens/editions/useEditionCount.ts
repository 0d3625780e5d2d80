import { useQuery } from '@tanstack/react-query';
import type { Edition } from '../../../records/edition.ts';
import type { EditionPlan } from '../../../records/editionPlan.ts';
import type { LedgerState } from '../../../records/ledger.ts';
import { type EditionCount, editionCount } from '../../../studio/editions/editionCount.ts';
import { editionPlanKey, openEditionPlan } from '../../client/editions.ts';

/** What an edition needs, worked out anew where the edition was saved since; the plan before is shown meanwhile. */
export function useEditionPlan(edition: Edition) {
  return useQuery<EditionPlan>({
    queryKey: [...editionPlanKey(edition.id), edition.version],
    queryFn: () => openEditionPlan(edition.id),
    placeholderData: (before) => before,
    staleTime: 0,
  });
}

/** How far the printing of an edition is; sheets are left out while the plan can't be asked for. */
export function useEditionCount(edition: Edition, state: LedgerState): EditionCount {
  const plan = useEditionPlan(edition);
  return editionCount(edition, state, plan.data?.sheets ?? null);
}
