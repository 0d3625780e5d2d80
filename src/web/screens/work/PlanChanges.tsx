import type { ScheduleChange } from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { OfferedChange } from './OfferedChange.tsx';
import { sentence } from './planWords.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/**
 * Why a plan can't be kept, and what would make it possible: what can be kept first, and the first of these lit as long
 * as nothing can be begun.
 */
export function PlanChanges({
  kept,
  desk,
  onMade,
}: {
  kept: KeptPlan;
  desk: Pick<WorkDesk, 'unsaved' | 'save'>;
  onMade: (id: string) => void;
}) {
  const { reason, changes, feasible, steps } = kept.plan.schedule;
  if (reason === null && changes.length === 0) return null;
  const offers = changes.toSorted((a, b) => rank(a.feasible) - rank(b.feasible));
  const lit = steps.length === 0 && offers[0]?.feasible === true ? offers[0] : null;
  return (
    <section aria-labelledby="changes-head" className="plan-changes">
      <h2 id="changes-head" className="big">
        {feasible === true ? say('It could also be') : say('What would help')}
      </h2>
      {reason && <p>{sentence(told(reason))}</p>}
      <ul>
        {offers.map((offered) => (
          <OfferedChange
            key={offered.change}
            offered={offered}
            lit={offered === lit}
            kept={kept}
            desk={desk}
            onMade={onMade}
          />
        ))}
      </ul>
    </section>
  );
}

function rank(feasible: ScheduleChange['feasible']): number {
  return feasible === true ? 0 : feasible === 'unknown' ? 1 : 2;
}
