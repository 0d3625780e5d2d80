import type { DayPlan } from '../../../src/records/dayPlan.ts';
import type { Week } from '../../../src/records/week.ts';
import { sampleHours } from '../../../src/sample/saltreach/sampleHours.ts';
import type { WorkToPlan } from '../../../src/studio/days/planning.ts';
import { planTogether } from '../../../src/studio/days/planTogether.ts';
import { presenceOf } from '../../../src/studio/days/presence.ts';
import { weekOf } from '../../../src/studio/days/weekOf.ts';

const now = Date.parse('2026-12-07T09:00:00Z');
const day = 86_400_000;
const at = new Date(now).toISOString();

function work(title: string, stoneName: string, more: Partial<WorkToPlan>, by: string): WorkToPlan {
  return {
    workId: title,
    title,
    stoneName,
    place: { told: [{ stage: 'roll-up', underWay: false }], skipped: [] },
    since: null,
    route: 'tannic',
    timed: { faceCm2: 1530, firstEtch: { seconds: 840, people: 1 }, times: [] },
    deadline: { goal: 'good-to-print', by, second: 'full', trialProofs: true, times: [] },
    ...more,
  };
}

function plansOf(works: readonly WorkToPlan[]): readonly DayPlan[] {
  const people = presenceOf(sampleHours, { from: now - 60 * day, to: now + 60 * day });
  return planTogether(works, { people, timeZone: sampleHours.timeZone, now });
}

/** A week with one work in time, one that needs the same hands, and one that is late. */
export const fullWeek: Week = weekOf({
  studio: sampleHours,
  from: '2026-12-07',
  at,
  plans: plansOf([
    work('Low Water', 'S-01', {}, '2026-12-11T17:00:00Z'),
    work('Slack Water', 'S-03', {}, '2026-12-11T17:00:00Z'),
    work(
      'High Water',
      'S-02',
      { place: { told: [{ stage: 'draw', underWay: false }], skipped: [] } },
      '2026-12-08T12:00:00Z',
    ),
  ]),
  marks: [
    {
      workId: 'Spring Tide',
      title: 'Spring Tide',
      stoneName: 'S-05',
      kind: 'best',
      at: '2026-12-08T16:20:00Z',
      words: 'best by then: washout',
    },
  ],
});

/** Nothing is due, and the room is closed for two days. */
export const quietWeek: Week = weekOf({
  studio: sampleHours,
  from: '2026-12-21',
  at,
  plans: [],
  marks: [],
});
