import type { DayPlan, DayStep } from '../../../records/dayPlan.ts';
import { lengthWords } from '../../../studio/days/zoneWords.ts';
import { basisWords } from '../../managers/standingWords.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { listWords } from '../../words/listWords.ts';
import { weekdayAndTimeIn } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { toldText } from '../../words/toldText.ts';

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
          {plan.reasons.map(toldText).join(' ')}
        </Notice>
      )}
      {plan.clashes.map(({ words }) => (
        <Notice key={words} kind="caution" title={say('Two at one time:')}>
          {toldText(words)}
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
            <dt>{say('As planned, with the longest times')}</dt>
            <dd>{boundsWords(plan.steps[0]?.latestStart ?? null, earliestFinish, said)}</dd>
          </div>
          <div>
            <dt>{say('If all goes quickly')}</dt>
            <dd>{boundsWords(ifQuick.latestStart, ifQuick.earliestFinish, said)}</dd>
          </div>
        </dl>
      )}
      <p className="soft">
        {say(
          'Planned with the longest times and the best rests, within opening hours and the people’s days; times are those of {timeZone}. {assumed}',
          { timeZone: plan.timeZone, assumed: plan.assumed.map(toldText).join(' ') },
        )}
      </p>
    </section>
  );
}

/** The latest start and the earliest end, in whole sentences. */
function boundsWords(latest: string | null, earliest: string | null, said: (iso: string) => string): string {
  if (latest === null && earliest === null)
    return say('Neither the latest start nor the earliest end is known.');
  if (latest === null)
    return say('By when it must start is not known. Begun as soon as can be, it is done {end}.', {
      end: said(earliest!),
    });
  if (earliest === null)
    return say('It must start {start} at the latest. When it is done is not known.', { start: said(latest) });
  return say('It must start {start} at the latest. Begun as soon as can be, it is done {end}.', {
    start: said(latest),
    end: said(earliest),
  });
}

function Step({ step, said }: { step: DayStep; said: (iso: string) => string }) {
  const { hands, people, wait, state } = step;
  const who = listWords([...new Set(step.spans.flatMap((span) => span.who))]);
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
        <h2 className="big">{toldText(step.name)}</h2>
        <p>
          {say(
            '{range}, {people, plural, one {one person} other {two people}}{named, select, yes { ({who})} other {}}{days, plural, =0 {} one {} other {, on # days}}',
            {
              range: rangeWords(hands.lowMinutes, hands.highMinutes),
              people,
              named: who === '' ? 'no' : 'yes',
              who,
              days: step.spans.length,
            },
          )}
        </p>
        {wait && (
          <p>
            {sayRich('Then rests {length} <span>({basis})</span>', {
              length:
                wait.leastMinutes === 0
                  ? say('up to {length}', { length: lengthWords(wait.wantedMinutes) })
                  : rangeWords(wait.leastMinutes, wait.wantedMinutes),
              span: (words) => <span className="soft">{words}</span>,
              basis: basisWords[wait.basis],
            })}
          </p>
        )}
        {step.why && <p className={state === 'too-late' ? 'days-why' : 'soft'}>{toldText(step.why)}</p>}
        <Fold title={say('Where this comes from')}>
          <p>
            {say('Hands: {basis}; {note}.', { basis: basisWords[hands.basis], note: toldText(hands.note) })}
          </p>
          {wait && (
            <p>
              {say('Rest: {basis}; {note}.', { basis: basisWords[wait.basis], note: toldText(wait.note) })}
            </p>
          )}
          {step.spans.map((span) => (
            <p key={span.from}>
              {say('{said} to {said2}: {who}', {
                said: said(span.from),
                said2: said(span.to),
                who: listWords(span.who),
              })}
            </p>
          ))}
          {step.earliestStart && <p>{say('Earliest start: {said}.', { said: said(step.earliestStart) })}</p>}
        </Fold>
      </div>
      <p className="days-to-spare">{toSpareWords(step)}</p>
    </li>
  );
}

function toSpareWords({ toSpareMinutes, state }: DayStep): string {
  if (toSpareMinutes === null) return state === 'too-late' ? say('not possible') : say('to spare: not known');
  if (toSpareMinutes < 0) return say('too late by {length}', { length: lengthWords(toSpareMinutes) });
  return toSpareMinutes === 0
    ? say('nothing to spare')
    : say('{length} to spare', { length: lengthWords(toSpareMinutes) });
}

/** Minutes from least to most: `20 to 45 min`, `30 min to 1 h`. */
function rangeWords(low: number | null, high: number | null): string {
  if (low === null || high === null) return say('not known');
  if (low === high) return lengthWords(low);
  return high < 60
    ? say('{low} to {high} min', { low, high })
    : say('{low} to {high}', { low: lengthWords(low), high: lengthWords(high) });
}
