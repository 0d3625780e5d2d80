import './WeekScreen.css';
import { useQuery } from '@tanstack/react-query';
import { Link, useSearch } from 'wouter';
import type { Week, WeekDay } from '../../../records/week.ts';
import { daysAfter } from '../../../science/calendar/zonedTime.ts';
import { clockWords, dayWords, momentWords } from '../../../studio/days/zoneWords.ts';
import { calendarAddress, openWeek, weekKey, weekSheetAddress } from '../../client/days.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { hoursText } from '../../managers/hoursTyped.ts';
import { ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';

/** Seven days of the room: who is there, and what each stone needs when. */
export default function WeekScreen() {
  const from = new URLSearchParams(useSearch()).get('from');
  const week = useQuery({ queryKey: [...weekKey, from], queryFn: () => openWeek(from) });
  const failure = week.isError ? shownFailure(week.error) : null;
  if (failure?.code === 'studio-not-described') {
    return (
      <>
        <PageHead stamp="The week" headline="Nobody has said who is here when" />
        <EmptyPage
          title="First the people and the hours"
          act={
            <ButtonLink kind="act" href="/studio">
              Enter people and hours
            </ButtonLink>
          }
        >
          <p>
            With opening hours and the days that each of you can work, Stonetone says by when a washout must
            start so that the proof is there on Friday.
          </p>
        </EmptyPage>
      </>
    );
  }
  return (
    <>
      <PageHead stamp="The week" headline={headlineOf(week.data)}>
        {week.data && (
          <ButtonFile kind="act" href={weekSheetAddress(week.data.from)}>
            Week sheet, PDF
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
  return week ? `${dayWords(week.from)} to ${dayWords(daysAfter(week.from, 6))}` : 'The week';
}

function OpenWeek({ week }: { week: Week }) {
  return (
    <div className="week">
      <nav className="week-ways" aria-label="Other weeks">
        <Link href={`/week?from=${daysAfter(week.from, -7)}`}>The seven days before</Link>
        <Link href="/week">From today</Link>
        <Link href={`/week?from=${daysAfter(week.from, 7)}`}>The seven days after</Link>
        <Link href="/studio">People and hours</Link>
      </nav>
      <Deadlines week={week} />
      <ol className="week-days">
        {week.days.map((day) => (
          <Day key={day.date} day={day} zone={week.timeZone} />
        ))}
      </ol>
      <p className="soft">
        Times are those of {week.timeZone}. <a href={calendarAddress}>Your calendar can follow this</a>: it
        keeps up with what is saved here.
      </p>
    </div>
  );
}

function Deadlines({ week: { works, timeZone } }: { week: Week }) {
  if (works.length === 0) {
    return (
      <Notice kind="aside" title="No work has a deadline yet.">
        Open a <Link href="/works">work</Link>, choose Days, and say by when it must be there.
      </Notice>
    );
  }
  return (
    <ul className="week-works" aria-label="Deadlines">
      {works.map((work) => (
        <li key={work.workId}>
          <Link href={`/works/${work.workId}/days`}>
            <b>{work.title}</b> <span className="soft">{work.stoneName}</span>
          </Link>
          <span>due {momentWords(timeZone, Date.parse(work.by))}</span>
          <span className={work.verdict === 'kept' || work.verdict === 'reached' ? '' : 'week-late'}>
            {work.sentence}
          </span>
          {work.clashes.map((clash) => (
            <span key={clash} className="week-clash">
              <b>Clash:</b> {clash}
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
        <h2 className="big">{dayWords(day.date)}</h2>
        <p className="soft">
          {open === '' ? 'closed' : open}
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
              <b>
                {step.stoneName} {step.title}
              </b>
              : {step.starts ? '' : 'go on with '}
              {step.name}, until {clock(step.to)}
            </span>
            <span className="soft">
              {step.who.join(' and ')} · {step.latest ? 'latest' : 'late: as soon as it can be'}
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
              : {mark.words}
            </span>
          </li>
        ))}
        {day.steps.length + day.marks.length === 0 && <li className="soft">Nothing has to start.</li>}
      </ol>
    </li>
  );
}
