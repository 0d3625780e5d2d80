import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useLocation } from 'wouter';
import type { TestPlanEntry } from '../../../records/testPlanEntry.ts';
import { copyTestPlan, listTestPlans, putTestPlanBy, testPlansKey } from '../../client/testPlans.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { useSaving } from '../useSaving.ts';

/** Planned tests that no stone was made of yet: to be gone on with, copied, or taken off. */
export function PlanLines() {
  const [, go] = useLocation();
  const queries = useQueryClient();
  const saving = useSaving<TestPlanEntry>();
  const { data: plans = [] } = useQuery({ queryKey: testPlansKey, queryFn: listTestPlans, staleTime: 0 });
  if (plans.length === 0) return null;
  const refresh = () => queries.invalidateQueries({ queryKey: testPlansKey });
  const copy = async (id: string) => {
    const copied = await saving.send(() => copyTestPlan(id));
    if (!copied) return;
    await refresh();
    go(`/test-stones/plan/${copied.id}`);
  };
  const takeOff = async ({ id, version }: TestPlanEntry) => {
    if (await saving.send(() => putTestPlanBy(id, version, true))) await refresh();
  };
  return (
    <section className="plans-kept" aria-labelledby="plans-kept">
      <h2 id="plans-kept">{say('Planned, no stone made yet')}</h2>
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <ul className="plan-lines">
        {plans.map((plan) => (
          <li key={plan.id}>
            <Link href={`/test-stones/plan/${plan.id}`}>
              <b>{nameOf(plan)}</b>
              <span className="soft">{standingOf(plan)}</span>
            </Link>
            <span className="plan-line-acts">
              <Button kind="quiet" disabled={saving.pending} onClick={() => void copy(plan.id)}>
                {sayRich('Plan anew from it<span>: {name}</span>', {
                  span: (words) => <span className="unseen">{words}</span>,
                  name: nameOf(plan),
                })}
              </Button>
              <Button kind="quiet" disabled={saving.pending} onClick={() => void takeOff(plan)}>
                {sayRich('Take off the list<span>: {name}</span>', {
                  span: (words) => <span className="unseen">{words}</span>,
                  name: nameOf(plan),
                })}
              </Button>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function nameOf({ title }: TestPlanEntry): string {
  return title.trim() === '' ? say('A test without a name') : title;
}

function standingOf({ troubles, treatments, levels }: TestPlanEntry): string {
  const unknown = levels.filter(({ state }) => state === 'unknown').length;
  if (troubles.length > 0) return told(troubles[0]!);
  if (unknown > 0)
    return say(
      '{unknown, plural, one {One word is not known here.} other {{unknown} words are not known here.}}',
      { unknown },
    );
  return treatments.map(({ name, levels: of }) => `${name}: ${of.join(', ')}`).join('; ');
}
