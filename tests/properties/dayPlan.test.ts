import fc from 'fast-check';
import { expect } from 'vitest';
import type { DayPlan } from '../../src/records/dayPlan.ts';
import type { LineStage } from '../../src/records/run.ts';
import type { HourSpan, StudioDraft, WeekHours } from '../../src/records/studio.ts';
import { wallClock } from '../../src/science/calendar/zonedTime.ts';
import { backFrom, type Chain, onFrom } from '../../src/studio/days/chain.ts';
import type { WorkToPlan } from '../../src/studio/days/planning.ts';
import { planTogether } from '../../src/studio/days/planTogether.ts';
import { hoursOn, minutesOf, type Presence, presenceOf } from '../../src/studio/days/presence.ts';
import { holds } from './holds.ts';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const between = (min: number, max: number) => fc.integer({ min, max });

/** Days around a change of the clock, and one without. */
const places = fc.constantFrom(
  ['Europe/London', '2027-03-26T10:00:00Z'],
  ['Europe/London', '2027-10-29T10:00:00Z'],
  ['Australia/Sydney', '2027-10-01T00:00:00Z'],
  ['Australia/Sydney', '2027-04-02T00:00:00Z'],
  ['Pacific/Auckland', '2027-09-24T00:00:00Z'],
  ['America/St_Johns', '2026-11-26T10:00:00Z'],
);

const clock = (quarter: number) =>
  `${String(Math.floor(quarter / 4)).padStart(2, '0')}:${String((quarter % 4) * 15).padStart(2, '0')}`;

/** One or two spans of a day, in quarters of an hour from 04:00 on: clear of the hours that clocks go through twice. */
const hours: fc.Arbitrary<readonly HourSpan[]> = fc
  .uniqueArray(between(16, 96), { minLength: 2, maxLength: 4 })
  .map((quarters) => {
    const sorted = quarters.toSorted((a, b) => a - b);
    const spans = [{ from: clock(sorted[0]!), to: clock(sorted[1]!) }];
    return sorted.length === 4 ? [...spans, { from: clock(sorted[2]!), to: clock(sorted[3]!) }] : spans;
  });
const week: fc.Arbitrary<WeekHours> = fc.array(fc.oneof({ weight: 3, arbitrary: hours }, fc.constant([])), {
  minLength: 7,
  maxLength: 7,
});

function studioIn(timeZone: string): fc.Arbitrary<StudioDraft> {
  return fc.record({ open: week, people: fc.array(week, { minLength: 1, maxLength: 3 }) }).map((drawn) => ({
    timeZone,
    open: drawn.open,
    exceptions: [],
    people: drawn.people.map((one, index) => ({
      name: `person ${index}`,
      initials: `P${index}`,
      week: one,
      exceptions: [],
    })),
    times: [],
  }));
}

const line: readonly LineStage[] = ['gum-border', 'draw', 'first-etch', 'base-air', 'roll-up', 'second-etch'];

const work: fc.Arbitrary<WorkToPlan> = fc
  .record({
    from: between(0, line.length - 1),
    dueMinutes: between(60, 12 * 1440),
    draw: between(1, 900),
    proofs: between(1, 300),
    two: fc.boolean(),
    since: fc.option(between(-3000, 0)),
  })
  .map(({ from, dueMinutes, draw, proofs, two, since }) => ({
    workId: '',
    title: '',
    stoneName: '',
    place: { told: [{ stage: line[from]!, underWay: false }], skipped: [] },
    since,
    route: 'tannic',
    timed: {
      faceCm2: 2000,
      firstEtch: { seconds: 600, people: two ? 2 : 1 },
      times: [
        { stage: 'draw', lowMinutes: Math.ceil(draw / 2), highMinutes: draw, people: 1 },
        { stage: 'proofs', lowMinutes: Math.ceil(proofs / 2), highMinutes: proofs, people: two ? 2 : 1 },
      ],
    },
    deadline: { goal: 'proofs', by: String(dueMinutes), second: 'full', trialProofs: two, times: [] },
  }));

const rooms = places.chain(([timeZone, now]) =>
  fc.record({
    studio: studioIn(timeZone!),
    now: fc.constant(Date.parse(now!)),
    works: fc.array(work, { minLength: 1, maxLength: 4 }),
  }),
);

function plansOf({ studio, now, works }: { studio: StudioDraft; now: number; works: WorkToPlan[] }) {
  const people = presenceOf(studio, { from: now - 40 * day, to: now + 60 * day });
  const named = works.map((one, index) => ({
    ...one,
    workId: `work ${index}`,
    since: one.since === null ? null : now + one.since * minute,
    deadline: { ...one.deadline, by: new Date(now + Number(one.deadline.by) * minute).toISOString() },
  }));
  return planTogether(named, { people, timeZone: studio.timeZone, now });
}

/** Read off the wall by the minute, without the project's own spans. */
function expectInside(studio: StudioDraft, from: number, to: number, who: readonly string[]): void {
  for (let ms = from; ms < to; ms += 15 * minute) {
    for (const at of [ms, Math.min(ms + 15 * minute, to) - minute]) {
      const { date, minutes } = wallClock(studio.timeZone, at);
      const open = (spans: readonly HourSpan[]) =>
        spans.some((span) => minutesOf(span.from) <= minutes && minutes < minutesOf(span.to));
      expect(open(hoursOn(date, studio.open, [])), `open at ${new Date(at).toISOString()}`).toBe(true);
      for (const initials of who) {
        const person = studio.people.find((one) => one.initials === initials)!;
        expect(open(hoursOn(date, person.week, [])), `${initials} there`).toBe(true);
      }
    }
  }
}

holds(
  'hands are planned only in opening hours and the person’s own, never at two things, each step after the one before',
  fc.property(rooms, (room) => {
    const plans = plansOf(room);
    const busy: { who: string; from: number; to: number }[] = [];
    for (const plan of plans) {
      expectOrder(plan);
      for (const { spans, people } of plan.steps) {
        for (const span of spans) {
          const [from, to] = [Date.parse(span.from), Date.parse(span.to)];
          expect(span.who.length).toBe(people);
          expectInside(room.studio, from, to, span.who);
          for (const who of span.who) {
            const twice = busy.some((one) => one.who === who && one.from < to && from < one.to);
            expect(twice, `${who} at ${span.from}`).toBe(false);
            busy.push({ who, from, to });
          }
        }
      }
    }
  }),
);

function expectOrder({ steps, by, at, verdict }: DayPlan): void {
  for (const [index, step] of steps.entries()) {
    const next = steps[index + 1];
    const wait = (step.wait?.wantedMinutes ?? 0) * minute;
    if (next?.latestStart && step.latestEnd)
      expect(Date.parse(step.latestEnd) + wait).toBeLessThanOrEqual(Date.parse(next.latestStart));
    if (next?.earliestStart && step.earliestEnd)
      expect(Date.parse(step.earliestEnd) + wait).toBeLessThanOrEqual(Date.parse(next.earliestStart));
    if (step.latestStart === null) continue;
    const whole = step.spans.reduce((sum, span) => sum + Date.parse(span.to) - Date.parse(span.from), 0);
    if (step.spans.length > 0) expect(whole).toBe(step.hands.highMinutes! * minute);
  }
  if (verdict !== 'kept') return;
  expect(Date.parse(steps.at(-1)!.latestEnd!)).toBeLessThanOrEqual(Date.parse(by));
  expect(Date.parse(steps[0]!.latestStart!)).toBeGreaterThanOrEqual(Date.parse(at));
}

holds(
  'what can be kept going on from now can be kept going back from its end, and the other way round',
  fc.property(rooms, (room) => {
    for (const plan of plansOf({ ...room, works: room.works.slice(0, 1) })) {
      if (plan.steps.length === 0) continue;
      const forwards = plan.earliestFinish !== null && plan.earliestFinish <= plan.by;
      const backwards = plan.steps.every(
        ({ toSpareMinutes }) => toSpareMinutes !== null && toSpareMinutes >= 0,
      );
      expect(backwards).toBe(forwards);
      expect(plan.verdict === 'kept').toBe(forwards);
      if (plan.verdict === 'kept') expect(plan.ifQuick.kept).toBe(true);
    }
  }),
);

/** Small cases in which everything lies on whole hours, so that trying every hour tries everything. */
const gridSpans = fc
  .uniqueArray(between(0, 40), { minLength: 2, maxLength: 10 })
  .map((ends) => ends.toSorted((a, b) => a - b))
  .map((ends) =>
    Array.from({ length: Math.floor(ends.length / 2) }, (_, index) => ({
      from: ends[2 * index]! * hour,
      to: ends[2 * index + 1]! * hour,
    })),
  );
const grid = fc.record({
  people: fc
    .array(gridSpans, { minLength: 1, maxLength: 3 })
    .map((all): Presence[] => all.map((spans, index) => ({ initials: `P${index}`, spans }))),
  chain: fc
    .array(
      fc.record({
        need: fc.record({
          people: fc.constantFrom(1 as const, 2 as const),
          lengthMs: between(1, 4).map((hours) => hours * hour),
          mayBreak: fc.boolean(),
        }),
        waitMs: between(0, 8).map((hours) => hours * hour),
      }),
      { minLength: 1, maxLength: 3 },
    )
    .map((chain): Chain => chain),
  by: between(1, 42),
});

/** All hours in which a crew is there. */
function crewHours(people: readonly Presence[], size: 1 | 2): readonly (readonly number[])[] {
  const there = people.map(({ spans }) =>
    Array.from({ length: 42 }, (_, at) => at).filter((at) =>
      spans.some(({ from, to }) => from <= at * hour && (at + 1) * hour <= to),
    ),
  );
  if (size === 1) return there;
  return there.flatMap((one, index) =>
    there.slice(index + 1).map((other) => one.filter((at) => other.includes(at))),
  );
}

/** Every way in which a step can start at an hour: the hours at which it can have ended. */
function endsFrom(people: readonly Presence[], { need }: Chain[number], start: number): readonly number[] {
  const { people: size, lengthMs, mayBreak } = need!;
  const length = lengthMs / hour;
  return crewHours(people, size).flatMap((there) => {
    if (!there.includes(start)) return [];
    const on = there.filter((at) => at >= start).slice(0, length);
    const whole = on.length === length && (mayBreak || on.at(-1)! - start === length - 1);
    return whole ? [on.at(-1)! + 1] : [];
  });
}

/** The latest hour at which a chain can start and be done by an hour, trying every hour; null where none can. */
function triedLatest(people: readonly Presence[], chain: Chain, from: number, by: number): number | null {
  const can = (step: number, ready: number): boolean => {
    if (step === chain.length) return true;
    for (let start = ready; start < by; start++) if (startsAt(step, start)) return true;
    return false;
  };
  const startsAt = (step: number, start: number): boolean =>
    endsFrom(people, chain[step]!, start).some(
      (end) => end <= by && can(step + 1, end + chain[step]!.waitMs / hour),
    );
  for (let start = by - 1; start >= from; start--) if (startsAt(0, start)) return start;
  return null;
}

holds(
  'no plan starts later, and none ends earlier, than the best found by trying every hour',
  fc.property(grid, ({ people, chain, by }) => {
    const latest = backFrom(people, chain, by * hour)[0]!.placed;
    expect(latest && latest.start / hour).toBe(triedLatest(people, chain, 0, by));
    const ends = onFrom(people, chain, 0).at(-1)!.placed?.end ?? null;
    const soonest = Array.from({ length: 42 }, (_, at) => at + 1).find(
      (end) => triedLatest(people, chain, 0, end) !== null,
    );
    expect(ends && ends / hour).toBe(soonest ?? null);
  }),
  400,
);
