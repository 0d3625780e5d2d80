import './TestStones.css';
import './PlanTest.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { TestPlanEntry } from '../../../records/testPlanEntry.ts';
import type { TestStone } from '../../../records/testStone.ts';
import type { CheapestTrial, TrialDesign } from '../../../records/trialDesign.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { makePlannedStones, openTestPlan, testPlanKey, testPlansKey } from '../../client/testPlans.ts';
import { testStoneKey, testStonesKey } from '../../client/testStones.ts';
import { designTest } from '../../client/trialDesigns.ts';
import { workId } from '../../client/waitedWork.ts';
import {
  hasStrips,
  planOfTyped,
  sizedAs,
  startingTrial,
  type TypedTrial,
  trialTroubles,
  typedOfPlan,
  wishOf,
} from '../../managers/testStones/trialForm.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { WaitedWork } from '../../parts/WaitedWork.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { useSaving } from '../useSaving.ts';
import { LevelNotes } from './LevelNotes.tsx';
import { PlannedTest } from './PlannedTest.tsx';
import { TestSizeFields } from './TestSizeFields.tsx';
import { TreatmentFields } from './TreatmentFields.tsx';
import { usePlanKept } from './usePlanKept.ts';

/** A number for the lots: the same one draws the same lots again. */
const drawSeed = () => Math.floor(Math.random() * 1_000_000);

/** Plans a test, or goes on with one that is kept. */
export default function PlanTest({ id }: { id: string | null }) {
  // once a new plan is kept, its address names it, and the hand goes on typing
  const [opened] = useState(id);
  const asked = useQuery({
    queryKey: testPlanKey(opened ?? ''),
    queryFn: () => openTestPlan(opened!),
    enabled: opened !== null,
    staleTime: 0,
    gcTime: 0,
    refetchOnWindowFocus: false,
  });
  if (asked.error)
    return (
      <div className="list-foot">
        <FailureNotice failure={shownFailure(asked.error)} />
      </div>
    );
  if (opened !== null && !asked.data) return <p className="unseen">{say('Opening …')}</p>;
  return <PlanForm first={asked.data ?? null} />;
}

/** What one wants to know, how it lies on the stone, and what it could notice; kept as it is typed. */
function PlanForm({ first }: { first: TestPlanEntry | null }) {
  const [, go] = useLocation();
  const kept = usePlanKept(first, (id) => go(`/test-stones/plan/${id}`, { replace: true }));
  const queries = useQueryClient();
  const laying = useSaving<TrialDesign>();
  const entering = useSaving<readonly TestStone[]>();
  const [typed, setTyped] = useState<TypedTrial>(() =>
    first ? typedOfPlan(first) : startingTrial(drawSeed()),
  );
  const [design, setDesign] = useState<TrialDesign | null>(null);
  const [tried, setTried] = useState(false);
  const wish = wishOf(typed);
  const troubles = tried ? trialTroubles(typed) : [];
  // What is laid out for words that were changed meanwhile is not shown.
  const latest = useRef(typed);
  const put = (next: TypedTrial) => {
    latest.current = next;
    setTyped(next);
    kept.put(planOfTyped(next));
    setDesign(null);
    laying.forget();
    entering.forget();
  };
  const change = (changes: Partial<TypedTrial>) => put({ ...typed, ...changes });
  const [work] = useState(workId);
  const ending = useRef(new AbortController());
  const layOut = async (next: TypedTrial) => {
    const asked = wishOf(next);
    if (!asked) return;
    ending.current = new AbortController();
    const { signal } = ending.current;
    const laid = await laying.send(() => designTest(asked, work, signal));
    // What was ended is no trouble.
    if (signal.aborted) laying.forget();
    else if (latest.current === next) setDesign(laid);
  };
  const lay = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    void layOut(typed);
  };
  const takeSize = (cheapest: CheapestTrial) => {
    const next = sizedAs(typed, cheapest);
    put(next);
    void layOut(next);
  };
  const enter = async () => {
    kept.put(planOfTyped(typed));
    const plan = await kept.flush();
    if (!plan) return;
    const entered = await entering.send(() => makePlannedStones(plan.id, plan.version));
    if (!entered) return;
    for (const stone of entered) queries.setQueryData(testStoneKey(stone.id), stone);
    void queries.invalidateQueries({ queryKey: testStonesKey });
    void queries.invalidateQueries({ queryKey: testPlansKey });
    go(entered.length === 1 ? `/test-stones/${entered[0]!.id}/steps` : '/test-stones');
  };
  const sayNew = (treatment: string, level: string) =>
    change({
      treatments: typed.treatments.map((each) =>
        each.name.trim() === treatment.trim()
          ? { ...each, newLevels: [...(each.newLevels ?? []), level] }
          : each,
      ),
    });
  return (
    <>
      <PageHead stamp={<Link href="/test-stones">{say('Test stones')}</Link>} headline={say('Plan a test')} />
      <div className="plan-head">
        <p className="plan-purpose">
          {say(
            'Say what you want to know and what you try. Its patches are then laid out on the stone by lot, and you see how small a difference they can show.',
          )}
        </p>
        <p className="soft" role="status">
          {keptWords(kept)}
        </p>
      </div>
      <div className="test-stone-two plan-test">
        <form className="test-stone-form" aria-label={say('What the test is to tell')} onSubmit={lay}>
          <Field
            label={say('What do you want to know?')}
            hint={say('It becomes the test’s name. Such as: which etch holds which medium?')}
            value={typed.title}
            maxLength={120}
            onChange={(event) => change({ title: event.target.value })}
          />
          <TreatmentFields
            treatments={typed.treatments}
            onTreatments={(treatments) => change({ treatments })}
          />
          {kept.entry && !kept.unsent && (
            <LevelNotes
              levels={kept.entry.levels}
              onNew={sayNew}
              onOwnEtch={(etch) =>
                change({
                  ownEtches: [...(typed.ownEtches ?? []).filter(({ level }) => level !== etch.level), etch],
                })
              }
            />
          )}
          <p className="soft">
            {say(
              'What is easy to change, such as a medium, goes to each patch; what is laid over many at once, such as an etch, to a whole strip or a whole stone. A strip or a stone then counts once, however many patches lie there.',
            )}
          </p>
          <TestSizeFields typed={typed} strips={hasStrips(typed)} onChange={change} />
          {troubles.length > 0 && (
            <Notice kind="trouble" title={say('Not yet:')}>
              {troubles.map(told).join(' ')}
            </Notice>
          )}
          {kept.trouble && <FailureNotice failure={kept.trouble} />}
          {laying.trouble && <FailureNotice failure={laying.trouble} />}
          <Button kind={design ? 'plain' : 'act'} type="submit" disabled={laying.pending}>
            {laying.pending
              ? say('Drawing lots and weighing it …')
              : design
                ? say('Lay it out again')
                : say('Lay it out')}
          </Button>
          {laying.pending && (
            <WaitedWork
              id={work}
              words={say('It is drawn by lot, and tried at low, middle and high scatter: a few seconds.')}
              onStop={() => ending.current.abort()}
            />
          )}
        </form>
        {design && wish ? (
          <PlannedTest
            design={design}
            wish={wish}
            pending={entering.pending}
            trouble={entering.trouble}
            onSize={takeSize}
            onEnter={() => void enter()}
          />
        ) : (
          <div className="plan-nothing">
            {!laying.pending && (
              <p className="soft">
                {say(
                  'The layout, what it could notice and what it could not tell apart come here once you lay it out.',
                )}
              </p>
            )}
          </div>
        )}
      </div>
    </>
  );
}

function keptWords({ entry, unsent }: Pick<ReturnType<typeof usePlanKept>, 'entry' | 'unsent'>): string {
  if (unsent) return say('What you type is being kept …');
  return entry ? say('Kept: leave this page whenever you like, the plan stands among the test stones.') : '';
}
