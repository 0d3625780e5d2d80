import type { DayPlan, DayStep } from '../../../records/dayPlan.ts';
import { lengthWords, momentWords, rangeWords } from '../../../studio/days/zoneWords.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';

/** A plan of days: what stands in the way, then every step with when it must start and what there is to spare. */
export function DayPlanSteps({ plan }: { plan: DayPlan }) {
  const said = (iso: string) => momentWords(plan.timeZone, Date.parse(iso));
  const { ifQuick, earliestFinish, verdict } = plan;
  return (
    <section className="days-plan" aria-label="What must start when">
      {plan.reasons.length > 0 && (
        <Notice
          kind={verdict === 'unknown' ? 'aside' : 'caution'}
          title={verdict === 'unknown' ? 'Not known:' : 'Too late:'}
        >
          {plan.reasons.join(' ')}
        </Notice>
      )}
      {plan.clashes.map(({ words }) => (
        <Notice key={words} kind="caution" title="Clash:">
          {words}
        </Notice>
      ))}
      {plan.steps.length > 0 && (
        <ol className="days-steps">
          {plan.steps.map((step) => (
            <Step key={step.stages.join()} step={step} said={said} />
          ))}
        </ol>
      )}
      {plan.steps.length > 0 && (
        <dl className="days-facts">
          <div>
            <dt>Earliest it can be done</dt>
            <dd>{earliestFinish ? said(earliestFinish) : 'not known'}</dd>
          </div>
          <div>
            <dt>If all goes quickly</dt>
            <dd>
              {ifQuick.latestStart
                ? `start by ${said(ifQuick.latestStart)}`
                : 'by when it must start is not known'}
              {ifQuick.earliestFinish && `; done by ${said(ifQuick.earliestFinish)} at the earliest`}
            </dd>
          </div>
        </dl>
      )}
      <p className="soft">
        Planned with the longest times and the best rests, within opening hours and the people’s days; times
        are those of {plan.timeZone}. {plan.assumed.join(' ')}
      </p>
    </section>
  );
}

function Step({ step, said }: { step: DayStep; said: (iso: string) => string }) {
  const { hands, people, wait, state } = step;
  const who = [...new Set(step.spans.flatMap((span) => span.who))].join(' and ');
  return (
    <li className={state === 'too-late' ? 'days-late' : undefined}>
      <p className="days-when">
        {step.latestStart ? (
          <>
            <span className="soft">{state === 'too-late' ? 'had to start by' : 'start by'}</span>{' '}
            <span className="big">{said(step.latestStart)}</span>
            {state === 'too-late' && step.earliestStart && (
              <span className="days-soonest">now from {said(step.earliestStart)}</span>
            )}
          </>
        ) : (
          <>
            <span className="soft">start</span> <span className="big">not known</span>
          </>
        )}
      </p>
      <div>
        <h2 className="big">{step.name}</h2>
        <p>
          {rangeWords(hands.lowMinutes, hands.highMinutes)}, {people === 2 ? 'two people' : 'one person'}
          {who && ` (${who})`}
          {step.spans.length > 1 && `, on ${step.spans.length} days`}
        </p>
        {wait && (
          <p>
            Then rests{' '}
            {wait.leastMinutes === 0
              ? `up to ${lengthWords(wait.wantedMinutes)}`
              : rangeWords(wait.leastMinutes, wait.wantedMinutes)}{' '}
            <span className="soft">({wait.basis})</span>
          </p>
        )}
        {step.why && <p className={state === 'too-late' ? 'days-why' : 'soft'}>{step.why}</p>}
        <Fold title="Where this comes from">
          <p>
            Hands: {hands.basis}; {hands.note}.
          </p>
          {wait && (
            <p>
              Rest: {wait.basis}; {wait.note}.
            </p>
          )}
          {step.spans.map((span) => (
            <p key={span.from}>
              {said(span.from)} to {said(span.to)}: {span.who.join(' and ')}
            </p>
          ))}
          {step.earliestStart && <p>Earliest start: {said(step.earliestStart)}.</p>}
        </Fold>
      </div>
      <p className="days-slack">{slackWords(step)}</p>
    </li>
  );
}

function slackWords({ slackMinutes, state }: DayStep): string {
  if (slackMinutes === null) return state === 'too-late' ? 'not possible' : 'to spare: not known';
  if (slackMinutes < 0) return `too late by ${lengthWords(slackMinutes)}`;
  return slackMinutes === 0 ? 'nothing to spare' : `${lengthWords(slackMinutes)} to spare`;
}
