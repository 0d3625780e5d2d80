import './DaysView.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Deadline, KeptDeadline } from '../../../records/dayPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import {
  dayPlansKey,
  deadlineKey,
  deadlinesKey,
  openDeadline,
  planDays,
  saveDeadline,
  weekKey,
} from '../../client/days.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { workStageWords } from '../../parts/stageWords.ts';
import { weekdayAndTimeIn } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import { useSaving } from '../useSaving.ts';
import { DayPlanSteps } from './DayPlanSteps.tsx';
import { DeadlineFields, nextGoal } from './DeadlineFields.tsx';

/** When must what start, so that the work is there by its moment? */
export function DaysView({ work }: { work: WorkEntry }) {
  const kept = useQuery({ queryKey: deadlineKey(work.id), queryFn: () => openDeadline(work.id) });
  if (kept.isError && !kept.data) {
    return (
      <div className="days">
        <FailureNotice failure={shownFailure(kept.error)} />
      </div>
    );
  }
  if (!kept.data) return <p className="unseen">{say('Opening …')}</p>;
  return <OpenDays work={work} kept={kept.data} />;
}

function OpenDays({ work, kept }: { work: WorkEntry; kept: KeptDeadline }) {
  const queries = useQueryClient();
  const [asked, setAsked] = useState<Deadline>(() => kept.deadline ?? byFriday());
  const [touched, setTouched] = useState(false);
  const saving = useSaving<KeptDeadline>();
  const found = useQuery({
    queryKey: [...dayPlansKey, work.id, asked],
    queryFn: () => planDays(work.id, asked),
    placeholderData: (before) => before,
    staleTime: 0,
  });
  const failure = found.isError ? shownFailure(found.error) : null;
  const hold = (now: KeptDeadline) => {
    queries.setQueryData(deadlineKey(work.id), now);
    for (const key of [deadlinesKey, weekKey]) {
      void queries.invalidateQueries({ queryKey: key, exact: key === deadlinesKey });
    }
  };
  const save = async (deadline: Deadline | null) => {
    const now = await saving.send(() => saveDeadline(work.id, kept.version, deadline), hold);
    if (now) hold(now);
  };
  const same = JSON.stringify(kept.deadline) === JSON.stringify(asked);
  const plan = found.data;
  const behind = plan?.verdict === 'reached' && plan.goal === asked.goal;
  const next = behind ? nextGoal(asked.goal) : null;
  const ask = (changed: Deadline) => {
    setTouched(true);
    setAsked(changed);
  };
  return (
    <>
      <PageHead
        stamp={`${work.stone.name} · ${work.title} · ${workStageWords[work.stage]}`}
        headline={
          failure || !plan
            ? say('When must what start?')
            : kept.deadline || touched || behind
              ? toldText(plan.sentence)
              : say('By when must it be there?')
        }
      />
      <div className="days">
        <section className="days-asked" aria-label={say('By when')}>
          <DeadlineFields asked={asked} steps={plan?.steps ?? []} onChange={ask} />
          {behind && !work.putBy && (
            <>
              <p>{say('That is done already on this stone: there is nothing to plan for it.')}</p>
              {next && (
                <Button kind="act" onClick={() => ask({ ...asked, goal: next })}>
                  {say('Plan the next stage: {stage}', { stage: told(lineRule(next).name) })}
                </Button>
              )}
            </>
          )}
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <div className="days-acts">
            {!work.putBy && !behind && (
              <Button kind="act" disabled={same || saving.pending} onClick={() => void save(asked)}>
                {same ? say('This deadline is kept') : say('Keep this deadline')}
              </Button>
            )}
            {kept.deadline && !work.putBy && (
              <Button disabled={saving.pending} onClick={() => void save(null)}>
                {say('Take the deadline away')}
              </Button>
            )}
            <ButtonLink href="/week">{say('The week')}</ButtonLink>
          </div>
        </section>
        {failure && (
          <div>
            <FailureNotice failure={failure} />
            {failure.code === 'studio-not-described' && (
              <ButtonLink href="/studio">{say('Enter people and hours')}</ButtonLink>
            )}
          </div>
        )}
        {!failure && plan && (
          <div className="days-plan">
            {!kept.deadline && !touched && !behind && (
              <>
                <p>
                  {say(
                    'Nobody has given a deadline yet. If it had to be there by {moment}, this is how it would run:',
                    {
                      moment: weekdayAndTimeIn(plan.timeZone, Date.parse(asked.by)),
                    },
                  )}
                </p>
                <p className="big">{toldText(plan.sentence)}</p>
              </>
            )}
            <DayPlanSteps plan={plan} />
          </div>
        )}
      </div>
    </>
  );
}

/** Good to print by the Friday of next week, 17:00 where the reader is. */
function byFriday(): Deadline {
  const moment = new Date();
  moment.setDate(moment.getDate() + ((5 - moment.getDay() + 7) % 7 || 7) + (moment.getDay() >= 3 ? 7 : 0));
  moment.setHours(17, 0, 0, 0);
  return { goal: 'good-to-print', by: moment.toISOString(), second: 'full', trialProofs: true, times: [] };
}
