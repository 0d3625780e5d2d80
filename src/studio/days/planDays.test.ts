import { describe, expect, it } from 'vitest';
import type { DayPlan } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import type { RoomTime } from '../../records/studio.ts';
import { aStudio, aWork, planningAt, weekOf } from './dayPlan.testing.ts';
import { planDays } from './planDays.ts';
import { planTogether } from './planTogether.ts';

/** Half an hour to an hour for a stage, by one. */
const hour = (stage: LineStage, people: 1 | 2 = 1): RoomTime => ({
  stage,
  lowMinutes: 30,
  highMinutes: 60,
  people,
});
const timed = (stages: readonly LineStage[], faceCm2 = 2000) => ({
  faceCm2,
  firstEtch: null,
  times: stages.map((stage) => hour(stage)),
});
const done = (stage: LineStage) => ({ told: [{ stage, underWay: false }], skipped: [] });
const starts = (plan: DayPlan) =>
  plan.steps.map(({ name, latestStart }) => `${name} ${latestStart?.slice(0, 16)}`);

describe('by hand', () => {
  const studio = aStudio();

  it('an etch that lies is no step with time to spare: it is now, whatever the deadline', () => {
    const stages = ['first-etch', 'washout', 'base', 'base-air', 'water', 'roll-up'] as const;
    const work = aWork({
      deadline: { goal: 'roll-up', by: '2026-12-04T17:00:00Z', second: 'full', trialProofs: true, times: [] },
      place: { told: [{ stage: 'first-etch', underWay: true }], skipped: [] },
      timed: timed(stages),
    });
    const plan = planDays(work, planningAt('2026-11-30T09:00:00Z', studio));
    expect(plan.steps[0]).toMatchObject({ latestStart: '2026-11-30T09:00:00.000Z', toSpareMinutes: 0 });
    expect(plan.steps[1]!.toSpareMinutes).toBeGreaterThan(1440);
  });

  it('good-to-print by Friday 17:00 from a rolled-up stone: each step as late as it can', () => {
    const stages = [
      'trial-proofs',
      'second-powder',
      'second-etch',
      'second-washout',
      'second-base',
      'second-base-air',
      'second-water',
      'second-roll-up',
      'proofs',
      'good-to-print',
    ] as const;
    const work = aWork({ place: done('roll-up'), timed: timed(stages) });
    const plan = planDays(work, planningAt('2026-11-30T09:00:00Z', studio));
    // Friday: washout, base, air 3 h; water and roll-up 2 h after 0 min; proofs 1 h; good-to-print 1 h, 16:00 to 17:00
    // Thursday: the etch must end 12 h before 10:00 on Friday: at 17:00, so powder and etch start at 15:00
    expect(starts(plan)).toEqual([
      'trial proofs 2026-12-03T14:00',
      'ink full and dry, rosin, then talc, second etch, full 2026-12-03T15:00',
      'washout, base, air the base 2026-12-04T10:00',
      'take off the gum with water, roll up 2026-12-04T13:00',
      'proofs until steady 2026-12-04T15:00',
      'good-to-print 2026-12-04T16:00',
    ]);
    expect(plan).toMatchObject({ verdict: 'kept', sentence: 'Start by Thu 3 Dec 14:00: trial proofs' });
    // it could start at 9:00 on Monday
    expect(plan.steps[0]!.toSpareMinutes).toBe(3 * 1440 + 5 * 60);
    // half the time each: etched by 17:00 on Thursday, proofs from 16:00 on Friday
    expect(plan.ifQuick).toMatchObject({ kept: true, latestStart: '2026-12-03T15:30:00.000Z' });
    expect(plan.earliestFinish).toBe('2026-12-01T16:00:00.000Z');
  });

  it('says what is too late already, by when it can be there and how far it gets', () => {
    const work = aWork({
      place: done('second-base'),
      since: Date.parse('2026-12-04T12:00:00Z'),
      timed: timed(['second-base-air', 'second-water', 'second-roll-up', 'proofs', 'good-to-print']),
    });
    const plan = planDays(work, planningAt('2026-12-04T13:00:00Z', studio));
    expect(plan.verdict).toBe('kept-if-quick');
    expect(plan.steps.every(({ state }) => state === 'too-late')).toBe(true);
    expect(plan.earliestFinish).toBe('2026-12-07T10:00:00.000Z');
    expect(plan.reasons.join(' ')).toContain('it had to start by Fri 4 Dec 12:00');
    const late = planDays(work, planningAt('2026-12-04T15:00:00Z', studio));
    expect(late.verdict).toBe('impossible');
    expect(late.sentence).toBe('Too late: good-to-print by Mon 7 Dec 13:00 at the earliest');
    expect(late.reasons).toContain('By Fri 4 Dec 17:00 it can be as far as air the base (Fri 4 Dec 16:00).');
  });

  it('waits through the night in hours that pass, not in hours of the clock', () => {
    // from the etch's end 8 h; open at all hours
    const open = aStudio({ open: weekOf('00:00', '24:00', 7) });
    const washed = ['washout', 'base', 'base-air'] as const;
    const plan = (by: string, zone = 'Europe/London') =>
      planDays(
        aWork({
          place: done('powder'),
          timed: timed(['first-etch', ...washed]),
          deadline: { goal: 'base-air', by },
        }),
        planningAt('2027-03-20T09:00:00Z', { ...open, timeZone: zone }, 300),
      ).steps[0]!.latestStart;
    // an etch, 8 h and a washout are 12 h between two moments, whatever the clock shows: 06:00 summer time less 12 h
    expect(plan('2027-03-28T06:00:00+01:00')).toBe('2027-03-27T17:00:00.000Z');
    expect(plan('2027-10-31T06:00:00Z')).toBe('2027-10-30T18:00:00.000Z');
    // closed at night: the clocks go on in the night to Sunday, so the room opens an hour earlier
    const days = aStudio({ open: weekOf('09:00', '19:00', 7) });
    const overnight = (by: string, timeZone: string, now: string) =>
      planDays(
        aWork({
          place: done('powder'),
          route: 'tannic',
          timed: {
            faceCm2: 2000,
            firstEtch: null,
            times: [...timed(washed).times, { ...hour('first-etch'), lowMinutes: 60, highMinutes: 60 }],
          },
          deadline: { goal: 'base-air', by },
        }),
        planningAt(now, { ...days, timeZone }, 90),
      ).steps.map(({ latestStart }) => latestStart);
    // washout from 01:00 local can't be: at 09:00 on Sunday at the earliest; the etch ends by 19:00 on Saturday
    expect(overnight('2027-03-28T12:00:00+01:00', 'Europe/London', '2027-03-20T09:00:00Z')).toEqual([
      '2027-03-27T18:00:00.000Z',
      '2027-03-28T08:00:00.000Z',
    ]);
    expect(overnight('2027-10-31T12:00:00Z', 'Europe/London', '2027-10-20T09:00:00Z')).toEqual([
      '2027-10-30T17:00:00.000Z',
      '2027-10-31T09:00:00.000Z',
    ]);
    // Sydney, October: 09:00 is 22:00 UTC of the day before once the clocks have gone on, 23:00 before
    expect(overnight('2027-10-03T12:00:00+11:00', 'Australia/Sydney', '2027-09-20T09:00:00Z')).toEqual([
      '2027-10-02T08:00:00.000Z',
      '2027-10-02T22:00:00.000Z',
    ]);
    expect(overnight('2027-04-04T12:00:00+10:00', 'Australia/Sydney', '2027-03-20T09:00:00Z')).toEqual([
      '2027-04-03T07:00:00.000Z',
      '2027-04-03T23:00:00.000Z',
    ]);
  });

  it('an hour that the night goes through twice gives two hours of hands, a leapt one none', () => {
    const night = aStudio({ open: weekOf('01:00', '02:00', 7) });
    const length = (now: string) =>
      planningAt(now, night, 1).people[0]!.spans.map(({ from, to }) => (to - from) / 3_600_000);
    expect(length('2027-03-28T12:00:00Z')).toEqual([1]);
    expect(length('2027-10-31T12:00:00Z')).toEqual([2, 1]);
  });
});

describe('what is not known', () => {
  const studio = aStudio();
  const drawing = (times: readonly RoomTime[]) =>
    planDays(
      aWork({
        place: done('gum-border'),
        timed: { faceCm2: 2000, firstEtch: { seconds: 600, people: 1 }, times },
        deadline: { goal: 'first-etch' },
      }),
      planningAt('2026-11-30T09:00:00Z', studio),
    );

  it('stays so: by when the drawing must be done is said, when it must start is not', () => {
    const plan = drawing([]);
    expect(plan.verdict).toBe('unknown');
    expect(plan.sentence).toBe('Draw: nobody has said how long it takes; it must be done by Fri 4 Dec 15:50');
    expect(plan.steps[0]).toMatchObject({
      latestStart: null,
      latestEnd: '2026-12-04T15:50:00.000Z',
      earliestStart: '2026-11-30T09:00:00.000Z',
      state: 'unknown',
    });
    expect(plan.steps[1]).toMatchObject({ latestStart: '2026-12-04T15:50:00.000Z', earliestStart: null });
  });

  it('a drawing of 20 hours is broken off at night, by the same hand', () => {
    const plan = drawing([{ stage: 'draw', lowMinutes: 600, highMinutes: 1200, people: 1 }]);
    expect(plan.verdict).toBe('kept');
    // 6 h 50 on Friday, 8 h on Thursday, 5 h 10 on Wednesday
    expect(plan.steps[0]!.spans).toEqual([
      { from: '2026-12-02T11:50:00.000Z', to: '2026-12-02T17:00:00.000Z', who: ['P.R.'] },
      { from: '2026-12-03T09:00:00.000Z', to: '2026-12-03T17:00:00.000Z', who: ['P.R.'] },
      { from: '2026-12-04T09:00:00.000Z', to: '2026-12-04T15:50:00.000Z', who: ['P.R.'] },
    ]);
  });

  it('is not taken for possible where the rest alone is too late', () => {
    const plan = planDays(
      aWork({ place: done('gum-border'), deadline: { goal: 'washout', by: '2026-11-30T12:00:00Z' } }),
      planningAt('2026-11-30T09:00:00Z', studio),
    );
    expect(plan.verdict).toBe('impossible');
  });

  it('two who never meet are named', () => {
    const apart = aStudio({
      people: [
        { name: 'the printer', initials: 'P.R.', week: weekOf('09:00', '13:00'), exceptions: [] },
        { name: 'the apprentice', initials: 'J.O.', week: weekOf('13:00', '17:00'), exceptions: [] },
      ],
    });
    const plan = planDays(
      aWork({ place: done('proofs'), deadline: { goal: 'good-to-print' } }),
      planningAt('2026-11-30T09:00:00Z', apart),
    );
    expect(plan.sentence).toBe('Good-to-print can’t be reached');
    expect(plan.reasons[0]).toContain('no two are ever here together while the room is open');
  });

  it('a stone that rests since an unknown moment rests from now, or is rested where all goes quickly', () => {
    const work = aWork({ place: done('first-etch'), deadline: { goal: 'washout' } });
    const plan = planDays(work, planningAt('2026-11-30T09:00:00Z', studio));
    expect(plan.steps[0]!.earliestStart).toBe('2026-12-01T09:00:00.000Z');
    expect(plan.ifQuick.earliestFinish! < '2026-11-30T10:00').toBe(true);
    expect(plan.assumed.join(' ')).toContain('is not logged');
  });
});

describe('two works and one pair of hands', () => {
  it('the earlier deadline has the first choice; whose hands are taken is said', () => {
    const studio = aStudio({ people: aStudio().people.slice(0, 1) });
    const work = (workId: string, title: string, by: string) =>
      aWork({
        workId,
        title,
        place: done('second-roll-up'),
        timed: { faceCm2: 2000, firstEtch: null, times: [{ ...hour('proofs'), highMinutes: 300 }] },
        deadline: { goal: 'proofs', by },
      });
    const planning = planningAt('2026-12-03T09:00:00Z', studio);
    const works = [
      work('b', 'High Water', '2026-12-04T17:00:00Z'),
      work('a', 'Low Water', '2026-12-04T16:00:00Z'),
    ];
    const [first, second] = planTogether(works, planning);
    expect(first).toMatchObject({ workId: 'a', clashes: [] });
    expect(first!.steps[0]!.latestStart).toBe('2026-12-04T11:00:00.000Z');
    expect(second!.steps[0]!.latestStart).toBe('2026-12-03T12:00:00.000Z');
    expect(second!.clashes[0]!.words).toBe(
      'proofs until steady: P.R. is at Low Water (proofs until steady) from Fri 4 Dec 11:00; it must start by Thu 3 Dec 12:00 instead of Fri 4 Dec 12:00',
    );
    const [, crowded] = planTogether(works, planningAt('2026-12-04T09:00:00Z', studio));
    expect(crowded!.verdict).toBe('kept-if-quick');
    expect(crowded!.clashes[0]!.words).toContain('by itself it could be kept');
  });
});
