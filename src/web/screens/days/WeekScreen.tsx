import './WeekScreen.css';
import { useQuery } from '@tanstack/react-query';
import { Link, useSearch } from 'wouter';
import type { Week, WeekDay } from '../../../records/week.ts';
import { daysAfter } from '../../../science/calendar/zonedTime.ts';
import { clockWords } from '../../../studio/days/zoneWords.ts';
import { calendarAddress, openWeek, weekKey, weekSheetAddress } from '../../client/days.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { hoursText } from '../../managers/hoursTyped.ts';
import { ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { listWords } from '../../words/listWords.ts';
import { weekdayAndDayOf, weekdayAndTimeIn } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { toldText } from '../../words/toldText.ts';

/** Seven days of the room: who is there, and what each stone needs when. */
export default function WeekScreen() {
  const from = new URLSearchParams(useSearch()).get('from');
  const week = useQuery({ queryKey: [...weekKey, from], queryFn: () => openWeek(from) });
  const failure = week.isError ? shownFailure(week.error) : null;
  if (failure?.code === 'studio-not-described') {
    return (
      <>
        <PageHead stamp={say('The week')} headline={say('Nobody has said who is here when')} />
        <EmptyPage
          title={say('First the people and the hours')}
          act={
            <ButtonLink kind="act" href="/studio">
              {say('Enter people and hours')}
            </ButtonLink>
          }
        >
          <p>
            {say(
              'With opening hours and the days that each of you can work, Stonetone says by when a washout must start so that the proof is there on Friday.',
            )}
          </p>
        </EmptyPage>
      </>
    );
  }
  return (
    <>
      <PageHead stamp={say('The week')} headline={headlineOf(week.data)}>
        {week.data && (
          <ButtonFile kind="act" href={weekSheetAddress(week.data.from)}>
            {say('Week sheet, PDF')}
          </ButtonFile>
        )}
      </PageHead>
      {failure && (
        <div className="list-foot">
          <FailureNotice failure={failure} />
        </div>
      )}
      {week.data && <OpenWeek week={week.data} />}
    </>
  );
}

function headlineOf(week: Week | undefined): string {
  return week
    ? say('{day} to {day2}', {
        day: weekdayAndDayOf(week.from),
        day2: weekdayAndDayOf(daysAfter(week.from, 6)),
      })
    : say('The week');
}

function OpenWeek({ week }: { week: Week }) {
  return (
    <div className="week">
      <nav className="week-ways" aria-label={say('Other weeks')}>
        <Link href={`/week?from=${daysAfter(week.from, -7)}`}>{say('Turn back a week')}</Link>
        <Link href="/week">{say('From today')}</Link>
        <Link href={`/week?from=${daysAfter(week.from, 7)}`}>{say('Turn on a week')}</Link>
        <Link href="/studio">{say('People and hours')}</Link>
      </nav>
      <Deadlines week={week} />
      <ol className="week-days">
        {week.days.map((day) => (
          <Day key={day.date} day={day} zone={week.timeZone} />
        ))}
      </ol>
      <p className="soft">
        {sayRich(
          'Times are those of {timeZone}. <a>Your calendar can follow this</a>: it keeps up with what is saved here.',
          { timeZone: week.timeZone, a: (words) => <a href={calendarAddress}>{words}</a> },
        )}
      </p>
    </div>
  );
}

function Deadlines({ week: { works, timeZone } }: { week: Week }) {
  if (works.length === 0) {
    return (
      <Notice kind="aside" title={say('No work has a deadline yet.')}>
        {sayRich('Open a <link>work</link>, choose Days, and say by when it must be there.', {
          link: (words) => <Link href="/works">{words}</Link>,
        })}
      </Notice>
    );
  }
  return (
    <ul className="week-works" aria-label={say('Deadlines')}>
      {works.map((work) => (
        <li key={work.workId}>
          <Link href={`/works/${work.workId}/days`}>
            <b>{work.title}</b> <span className="soft">{work.stoneName}</span>
          </Link>
          <span>
            {say('must be there by {moment}', { moment: weekdayAndTimeIn(timeZone, Date.parse(work.by)) })}
          </span>
          <span className={work.verdict === 'kept' || work.verdict === 'reached' ? '' : 'week-late'}>
            {toldText(work.sentence)}
          </span>
          {work.clashes.map((clash) => (
            <span key={clash} className="week-clash">
              <b>{say('Two at one time:')}</b> {toldText(clash)}
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
}

function Day({ day, zone }: { day: WeekDay; zone: string }) {
  const open = hoursText(day.open);
  const clock = (iso: string) => clockWords(zone, Date.parse(iso));
  return (
    <li className="week-day">
      <div>
        <h2 className="big">{weekdayAndDayOf(day.date)}</h2>
        <p className="soft">
          {open === '' ? say('closed') : open}
          {day.note && `, ${day.note}`}
        </p>
        <ul>
          {day.people.map(({ initials, hours }) => (
            <li key={initials}>
              <b>{initials}</b> {hoursText(hours)}
            </li>
          ))}
        </ul>
      </div>
      <ol className="week-steps">
        {day.steps.map((step) => (
          <li key={`${step.workId} ${step.name} ${step.from}`}>
            <span className="big week-clock">{clock(step.from)}</span>
            <span>
              {step.starts
                ? sayRich('<b>{stoneName} {title}</b>: {step}, until {clock}', {
                    b: (words) => <b>{words}</b>,
                    stoneName: step.stoneName,
                    title: step.title,
                    step: toldText(step.name),
                    clock: clock(step.to),
                  })
                : sayRich('<b>{stoneName} {title}</b>: go on with {step}, until {clock}', {
                    b: (words) => <b>{words}</b>,
                    stoneName: step.stoneName,
                    title: step.title,
                    step: toldText(step.name),
                    clock: clock(step.to),
                  })}
            </span>
            <span className="soft">
              {step.latest
                ? say('{who} · latest', { who: listWords(step.who) })
                : say('{who} · late: as soon as it can be', { who: listWords(step.who) })}
            </span>
          </li>
        ))}
        {day.marks.map((mark) => (
          <li key={`${mark.workId} ${mark.at} ${mark.words}`}>
            <span className="big week-clock">{clock(mark.at)}</span>
            <span>
              <b>
                {mark.stoneName} {mark.title}
              </b>
              : {toldText(mark.words)}
            </span>
          </li>
        ))}
        {day.steps.length + day.marks.length === 0 && (
          <li className="soft">{say('Nothing has to start.')}</li>
        )}
      </ol>
    </li>
  );
}
