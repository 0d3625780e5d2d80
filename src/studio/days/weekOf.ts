import type { DayPlan } from '../../records/dayPlan.ts';
import type { HourSpan, StudioDraft } from '../../records/studio.ts';
import type { Week, WeekDay, WeekMark, WeekStep } from '../../records/week.ts';
import { daysAfter, momentAt, wallClock } from '../../science/calendar/zonedTime.ts';
import { hoursOn, presenceOf } from './presence.ts';
import type { Span } from './spans.ts';
import { clockWords } from './zoneWords.ts';

export interface WeekInput {
  readonly studio: StudioDraft;
  /** ISO day of the first. */
  readonly from: string;
  readonly at: string;
  /** In order of their deadlines. */
  readonly plans: readonly DayPlan[];
  readonly marks: readonly WeekMark[];
}

/** Seven days from one on: who is there, what each stone needs when, and what is best by then. */
export function weekOf({ studio, from, at, plans, marks }: WeekInput): Week {
  const dates = Array.from({ length: 7 }, (_, index) => daysAfter(from, index));
  return {
    from,
    timeZone: studio.timeZone,
    at,
    days: dates.map((date) => dayOf(date, studio, plans, marks)),
    works: plans.map((plan) => ({
      workId: plan.workId,
      title: plan.title,
      stoneName: plan.stoneName,
      goal: plan.goal,
      by: plan.by,
      sentence: plan.sentence,
      reasons: plan.reasons,
      verdict: plan.verdict,
      clashes: plan.clashes.map(({ words }) => words),
    })),
  };
}

function dayOf(
  date: string,
  studio: StudioDraft,
  plans: readonly DayPlan[],
  marks: readonly WeekMark[],
): WeekDay {
  const { timeZone } = studio;
  const whole: Span = {
    from: momentAt(timeZone, date, 0, 'first'),
    to: momentAt(timeZone, daysAfter(date, 1), 0, 'first'),
  };
  const here = presenceOf(studio, whole);
  return {
    date,
    open: hoursOn(date, studio.open, studio.exceptions),
    note: studio.exceptions.find((one) => one.date === date)?.note ?? '',
    people: studio.people.flatMap(({ initials, name }, index) => {
      const hours = here[index]!.spans.map((span) => hoursOf(timeZone, span));
      return hours.length > 0 ? [{ initials, name, hours }] : [];
    }),
    steps: plans
      .flatMap((plan) => stepsOf(plan, whole))
      .toSorted((a, b) => Date.parse(a.from) - Date.parse(b.from)),
    marks: marks
      .filter((mark) => wallClock(timeZone, Date.parse(mark.at)).date === date)
      .toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at)),
  };
}

function hoursOf(zone: string, { from, to }: Span): HourSpan {
  const end = clockWords(zone, to);
  return { from: clockWords(zone, from), to: end === '00:00' ? '24:00' : end };
}

function stepsOf({ workId, title, stoneName, steps }: DayPlan, day: Span): readonly WeekStep[] {
  return steps.flatMap(({ name, spans, state }) =>
    spans.flatMap(({ from, to, who }, index): readonly WeekStep[] => {
      if (Date.parse(from) >= day.to || Date.parse(to) <= day.from) return [];
      const inside = {
        from: new Date(Math.max(Date.parse(from), day.from)).toISOString(),
        to: new Date(Math.min(Date.parse(to), day.to)).toISOString(),
      };
      const starts = index === 0 && Date.parse(from) >= day.from;
      return [{ workId, title, stoneName, name, ...inside, who, starts, latest: state !== 'too-late' }];
    }),
  );
}
