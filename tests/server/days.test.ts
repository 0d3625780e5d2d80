import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { keptDeadlineSchema } from '../../src/contract/dayPlan.ts';
import { saveRefusalSchema } from '../../src/contract/saveRefusal.ts';
import { studioSettingsSchema } from '../../src/contract/studio.ts';
import type { DayPlan, KeptDeadline } from '../../src/records/dayPlan.ts';
import type { RunSummary } from '../../src/records/run.ts';
import type { StudioSettings } from '../../src/records/studio.ts';
import type { Week } from '../../src/records/week.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const allDay = Array.from({ length: 7 }, () => [{ from: '08:00', to: '20:00' }]);
const room = {
  timeZone: 'Europe/London',
  open: allDay,
  people: [
    { name: 'the printer', initials: 'P.R.', week: allDay },
    { name: 'the apprentice', initials: 'J.O.', week: allDay },
  ],
};
const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();

async function aPlannedWork(): Promise<{ studio: StudioUnderTest; work: WorkEntry }> {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water', { stage: 'rolled-up' });
  return { studio, work };
}

describe('people and hours', () => {
  it('are empty in some zone at first, saved whole, and refused to who comes second', async () => {
    const studio = await studioUnderTest();
    const empty = await studio.json<StudioSettings>('/api/studio');
    expect(empty).toMatchObject({ people: [], version: 0, changedAt: null });
    studioSettingsSchema.parse(empty);
    const saved = await studio.send<StudioSettings>('PUT', '/api/studio', { ...room, version: 0 });
    expect(saved).toMatchObject({
      status: 200,
      body: { version: 1, timeZone: 'Europe/London', exceptions: [] },
    });
    expect(await studio.json('/api/studio')).toEqual(saved.body);
    const second = await studio.send<Refusal>('PUT', '/api/studio', { ...room, people: [], version: 0 });
    expect(second).toMatchObject({ status: 409, body: { code: 'stale-save', current: saved.body } });
    saveRefusalSchema(studioSettingsSchema).parse(second.body);
    expect(await studio.send('PUT', '/api/studio', { ...room, version: 1 })).toMatchObject({ status: 200 });
  });

  it('that can’t be are refused with the field', async () => {
    const studio = await studioUnderTest();
    const [printer] = room.people;
    const wrong: readonly [object, string][] = [
      [{ timeZone: 'Saltreach/Creek' }, 'timeZone'],
      [{ timeZone: '+01:00' }, 'timeZone'],
      [{ open: allDay.slice(1) }, 'open'],
      [{ open: [[{ from: '17:00', to: '09:00' }], ...allDay.slice(1)] }, 'open[0]'],
      [{ open: [[{ from: '9:00', to: '17:00' }], ...allDay.slice(1)] }, 'open[0][0].from'],
      [{ people: [printer, printer] }, 'people'],
      [{ exceptions: [{ date: '2026-13-01', hours: [] }] }, 'exceptions[0].date'],
      [{ times: [{ stage: 'draw', lowMinutes: 60, highMinutes: 30 }] }, 'times[0].lowMinutes'],
    ];
    for (const [change, path] of wrong) {
      const answer = await studio.send<Refusal>('PUT', '/api/studio', { ...room, ...change, version: 0 });
      expect(answer, path).toMatchObject({ status: 400, body: { code: 'body-malformed', path } });
    }
  });
});

describe('a work’s days', () => {
  it('are planned only once somebody is there, and no further than a year on', async () => {
    const { studio, work } = await aPlannedWork();
    const plan = (body: object, id = work.id) =>
      studio.send<DayPlan & Refusal>('POST', `/api/works/${id}/day-plan`, body);
    expect((await plan({ by: inDays(7) })).body.code).toBe('studio-not-described');
    expect((await studio.send<Refusal>('GET', '/api/week')).body.code).toBe('studio-not-described');
    await studio.send('PUT', '/api/studio', { ...room, version: 0 });
    expect(await plan({ by: inDays(400) })).toMatchObject({
      status: 422,
      body: { code: 'deadline-too-far' },
    });
    expect((await plan({ by: inDays(7) }, 'nobody')).status).toBe(404);
    expect((await plan({ by: 'Friday' })).status).toBe(400);
    const { status, body } = await plan({ by: inDays(7) });
    expect(status).toBe(200);
    expect(body).toMatchObject({ verdict: 'kept', goal: 'good-to-print', stoneName: 'S-01' });
    expect(body.steps.map(({ stages }) => stages[0])).toEqual([
      'trial-proofs',
      'second-powder',
      'second-washout',
      'second-water',
      'proofs',
      'good-to-print',
    ]);
    expect(body.steps.every(({ hands }) => hands.basis === 'memory' && hands.note !== '')).toBe(true);
    const quick = await plan({ by: inDays(7), second: 'quick', trialProofs: false });
    expect(quick.body.steps.map(({ stages }) => stages.at(-1))).toEqual([
      'second-etch-quick',
      'proofs',
      'good-to-print',
    ]);
    expect((await plan({ by: inDays(-1) })).body.verdict).toBe('impossible');
    expect((await plan({ by: inDays(3), goal: 'first-etch' })).body.verdict).toBe('reached');
  });

  it('go on from where the log says that the stone is', async () => {
    const { studio, work } = await aPlannedWork();
    await studio.send('PUT', '/api/studio', { ...room, version: 0 });
    const run = await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id });
    const log = (kind: string, stage: string, at: string) =>
      studio.send('POST', `/api/runs/${run.body.id}/events`, {
        clientId: kind + stage,
        kind,
        at,
        payload: { stage },
      });
    const ended = new Date(Date.now() - 3_600_000).toISOString();
    await log('stage-started', 'second-etch', inDays(-0.1));
    await log('stage-ended', 'second-etch', ended);
    const { body } = await studio.send<DayPlan>('POST', `/api/works/${work.id}/day-plan`, { by: inDays(7) });
    expect(body.steps[0]!.stages).toEqual(['second-washout', 'second-base', 'second-base-air']);
    const rested = Date.parse(ended) + 12 * 3_600_000;
    expect(Date.parse(body.steps[0]!.earliestStart!)).toBeGreaterThanOrEqual(rested - 1000);
  });

  it('have a deadline that is saved, refused to who comes second, listed and taken away', async () => {
    const { studio, work } = await aPlannedWork();
    const path = `/api/works/${work.id}/deadline`;
    expect(await studio.json(path)).toEqual({ workId: work.id, deadline: null, version: 0, changedAt: null });
    const save = (version: number, deadline: object | null) =>
      studio.send<KeptDeadline & Refusal>('PUT', path, { version, deadline });
    const saved = await save(0, { by: inDays(7) });
    expect(saved).toMatchObject({ status: 200, body: { version: 1, deadline: { goal: 'good-to-print' } } });
    const second = await save(0, { by: inDays(8) });
    expect(second).toMatchObject({ status: 409, body: { code: 'stale-save', current: saved.body } });
    saveRefusalSchema(keptDeadlineSchema).parse(second.body);
    expect(await studio.json('/api/deadlines')).toEqual({ deadlines: [saved.body] });
    expect(await save(1, { by: inDays(500) })).toMatchObject({ status: 422, body: { path: 'deadline.by' } });
    expect((await save(1, null)).body).toMatchObject({ deadline: null, version: 2 });
    expect(await studio.json('/api/deadlines')).toEqual({ deadlines: [] });
    expect((await studio.send('GET', '/api/works/nobody/deadline')).status).toBe(404);
  });
});

describe('the week and the calendar', () => {
  it('show who is there, what starts when, and the same moments', async () => {
    const { studio, work } = await aPlannedWork();
    await studio.send('PUT', '/api/studio', { ...room, version: 0 });
    const by = inDays(4);
    await studio.send('PUT', `/api/works/${work.id}/deadline`, { version: 0, deadline: { by } });
    const { body: plan } = await studio.send<DayPlan>('POST', `/api/works/${work.id}/day-plan`, { by });
    const week = await studio.json<Week>('/api/week');
    expect(week.days).toHaveLength(7);
    expect(week.days[0]!.people).toEqual([
      { initials: 'P.R.', name: 'the printer', hours: [{ from: '08:00', to: '20:00' }] },
      { initials: 'J.O.', name: 'the apprentice', hours: [{ from: '08:00', to: '20:00' }] },
    ]);
    const starts = week.days.flatMap(({ steps }) =>
      steps.filter((step) => step.starts).map(({ from }) => from),
    );
    expect(starts).toEqual(plan.steps.map(({ latestStart }) => latestStart));
    expect((await studio.json<Week>('/api/week?from=2026-03-02')).days.map(({ date }) => date)[6]).toBe(
      '2026-03-08',
    );

    const sheet = await studio.call('/api/week.pdf?paper=letter');
    expect(sheet.headers.get('content-type')).toBe('application/pdf');
    expect((await sheet.text()).slice(0, 5)).toBe('%PDF-');

    const response = await studio.call('/api/calendar.ics');
    expect(response.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
    const events = eventsOf(await response.text());
    const started = plan.steps.map(({ stages }) => `start-${work.id}-${stages[0]}@stonetone`);
    expect(events.map(({ uid }) => uid).sort()).toEqual([...started, `deadline-${work.id}@stonetone`].sort());
    for (const { stages, latestStart, latestEnd } of plan.steps) {
      const event = events.find(({ uid }) => uid === `start-${work.id}-${stages[0]}@stonetone`)!;
      expect([event.from, event.to]).toEqual([Date.parse(latestStart!), Date.parse(latestEnd!)]);
    }
    // moved, a thing is the same thing
    await studio.send('PUT', `/api/works/${work.id}/deadline`, { version: 1, deadline: { by: inDays(5) } });
    const moved = eventsOf(await (await studio.call('/api/calendar.ics')).text());
    expect(moved.map(({ uid }) => uid).sort()).toEqual(events.map(({ uid }) => uid).sort());
    expect(moved.map(({ from }) => from)).not.toEqual(events.map(({ from }) => from));
  });

  it('names until when a logged wait is best, also where nobody described the room', async () => {
    const { studio, work } = await aPlannedWork();
    const run = await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id });
    const at = new Date().toISOString();
    await studio.send('POST', `/api/runs/${run.body.id}/events`, {
      clientId: 'a',
      kind: 'stage-ended',
      at,
      payload: { stage: 'base' },
    });
    const events = eventsOf(await (await studio.call('/api/calendar.ics')).text());
    const best = events.find(({ uid }) => uid === `best-${work.id}-base@stonetone`)!;
    expect(Math.abs(best.from - Date.parse(at) - 36 * 3_600_000)).toBeLessThan(60_000);
    expect(best.summary).toContain('S-01 Low Water: best by then');
  });
});

/** Read by a parser that shares nothing with the one that writes. */
function eventsOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  expect(calendar.getFirstPropertyValue('x-wr-timezone')).toBeTruthy();
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    expect(event.startDate.zone.tzid).toBe('UTC');
    return {
      uid: event.uid,
      summary: event.summary,
      from: event.startDate.toJSDate().getTime(),
      to: event.endDate.toJSDate().getTime(),
    };
  });
}
