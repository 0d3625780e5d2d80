import type { Deadline } from '../../records/dayPlan.ts';
import type { HourSpan, StudioDraft, WeekHours } from '../../records/studio.ts';
import type { Planning, WorkToPlan } from './planning.ts';
import { presenceOf } from './presence.ts';

const day = 86_400_000;

/** The same hours on so many days from Monday on. */
export function weekOf(from: string, to: string, days = 5): WeekHours {
  const hours: readonly HourSpan[] = [{ from, to }];
  return Array.from({ length: 7 }, (_, index) => (index < days ? hours : []));
}

/** A room open on weekdays from 9 to 17, with two people who are there all day. */
export function aStudio(more: Partial<StudioDraft> = {}): StudioDraft {
  const week = weekOf('00:00', '24:00', 7);
  return {
    timeZone: 'Europe/London',
    open: weekOf('09:00', '17:00'),
    exceptions: [],
    people: [
      { name: 'the printer', initials: 'P.R.', week, exceptions: [] },
      { name: 'the apprentice', initials: 'J.O.', week, exceptions: [] },
    ],
    times: [],
    ...more,
  };
}

/** What days are planned by, at a moment. @param days how far presence reaches, either way */
export function planningAt(now: string, studio: StudioDraft, days = 90): Planning {
  const ms = Date.parse(now);
  return {
    people: presenceOf(studio, { from: ms - days * day, to: ms + days * day }),
    timeZone: studio.timeZone,
    now: ms,
  };
}

type More = Partial<Omit<WorkToPlan, 'deadline'>> & { readonly deadline?: Partial<Deadline> };

/** A work under its base since a moment that must be good to print. */
export function aWork({ deadline, ...more }: More = {}): WorkToPlan {
  return {
    workId: 'low-water',
    title: 'Low Water',
    stoneName: 'S-01',
    place: { told: [{ stage: 'base', underWay: false }], skipped: [] },
    since: null,
    route: 'tannic',
    timed: { faceCm2: 2000, firstEtch: null, times: [] },
    ...more,
    deadline: {
      goal: 'good-to-print',
      by: '2026-12-04T17:00:00Z',
      second: 'full',
      trialProofs: true,
      times: [],
      ...deadline,
    },
  };
}
