import type { DayPlan, DayStep } from '../../../records/dayPlan.ts';
import { lengthWords, rangeWords } from '../../../studio/days/zoneWords.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { weekdayAndTimeIn } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';

/** A plan of days: what stands in the way, then every step with when it must start and what there is to spare. */
export function DayPlanSteps({ plan }: { plan: DayPlan }) {
  const said = (iso: string) => weekdayAndTimeIn(plan.timeZone, Date.parse(iso));
  const { ifQuick, earliestFinish, verdict } = plan;
  return (
    <section className="days-plan" aria-label={say('What must start when')}>
      {plan.reasons.length > 0 && (
        <Notice
          kind={verdict === 'unknown' ? 'aside' : 'caution'}
          title={verdict === 'unknown' ? say('Not known:') : say('Too late:')}
        >
          {plan.reasons.join(' ')}
        </Notice>
      )}
      {plan.clashes.map(({ words }) => (
        <Notice key={words} kind="caution" title={say('Two at one time:')}>
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
            <dt>{say('Earliest it can be done')}</dt>
            <dd>{earliestFinish ? said(earliestFinish) : say('not known')}</dd>
          </div>
          <div>
            <dt>{say('If all goes quickly')}</dt>
            <dd>
              {ifQuick.latestStart
                ? say('start by {said}{earliestFinish}', {
                    said: said(ifQuick.latestStart),
                    earliestFinish:
                      ifQuick.earliestFinish &&
                      say('; done by {said} at the earliest', { said: said(ifQuick.earliestFinish) }),
                  })
                : say('by when it must start is not known{earliestFinish}', {
                    earliestFinish:
                      ifQuick.earliestFinish &&
                      say('; done by {said} at the earliest', { said: said(ifQuick.earliestFinish) }),
                  })}
            </dd>
          </div>
        </dl>
      )}
      <p className="soft">
        {say(
          'Planned with the longest times and the best rests, within opening hours and the people’s days; times are those of {timeZone}. {assumed}',
          { timeZone: plan.timeZone, assumed: plan.assumed.join(' ') },
        )}
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
            <span className="soft">{state === 'too-late' ? say('had to start by') : say('start by')}</span>{' '}
            <span className="big">{said(step.latestStart)}</span>
            {state === 'too-late' && step.earliestStart && (
              <span className="days-soonest">
                {say('now from {said}', { said: said(step.earliestStart) })}
              </span>
            )}
          </>
        ) : (
          <>
            <span className="soft">{say('start')}</span> <span className="big">{say('not known')}</span>
          </>
        )}
      </p>
      <div>
        <h2 className="big">{step.name}</h2>
        <p>
          {people === 2
            ? say('{range}, two people{who}{count}', {
                range: rangeWords(hands.lowMinutes, hands.highMinutes),
                who: who && ` (${who})`,
                count: step.spans.length > 1 && say(', on {count} days', { count: step.spans.length }),
              })
            : say('{range}, one person{who}{count}', {
                range: rangeWords(hands.lowMinutes, hands.highMinutes),
                who: who && ` (${who})`,
                count: step.spans.length > 1 && say(', on {count} days', { count: step.spans.length }),
              })}
        </p>
        {wait && (
          <p>
            {sayRich('Then rests {length} <span>({basis})</span>', {
              length:
                wait.leastMinutes === 0
                  ? say('up to {length}', { length: lengthWords(wait.wantedMinutes) })
                  : rangeWords(wait.leastMinutes, wait.wantedMinutes),
              span: (words) => <span className="soft">{words}</span>,
              basis: wait.basis,
            })}
          </p>
        )}
        {step.why && <p className={state === 'too-late' ? 'days-why' : 'soft'}>{told(step.why)}</p>}
        <Fold title={say('Where this comes from')}>
          <p>{say('Hands: {basis}; {note}.', { basis: hands.basis, note: hands.note })}</p>
          {wait && <p>{say('Rest: {basis}; {note}.', { basis: wait.basis, note: wait.note })}</p>}
          {step.spans.map((span) => (
            <p key={span.from}>
              {say('{said} to {said2}: {who}', {
                said: said(span.from),
                said2: said(span.to),
                who: span.who.join(' and '),
              })}
            </p>
          ))}
          {step.earliestStart && <p>{say('Earliest start: {said}.', { said: said(step.earliestStart) })}</p>}
        </Fold>
      </div>
      <p className="days-slack">{slackWords(step)}</p>
    </li>
  );
}

function slackWords({ slackMinutes, state }: DayStep): string {
  if (slackMinutes === null) return state === 'too-late' ? say('not possible') : say('to spare: not known');
  if (slackMinutes < 0) return say('too late by {length}', { length: lengthWords(slackMinutes) });
  return slackMinutes === 0
    ? say('nothing to spare')
    : say('{length} to spare', { length: lengthWords(slackMinutes) });
}
