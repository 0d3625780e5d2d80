import { setTimeout } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { sealedInExport } from '../../src/application/export/sealedInExport.ts';
import type { ComparisonEntry } from '../../src/records/comparisonEntry.ts';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { TestStoneReading } from '../../src/records/patchReading.ts';
import type { RunSummary } from '../../src/records/run.ts';
import type { TestCourse } from '../../src/records/testCourse.ts';
import type { TestPlanEntry } from '../../src/records/testPlanEntry.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import type { TestStoneAnswer } from '../../src/records/testStoneAnswer.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const draft = {
  title: 'T-5: which etch',
  treatments: [
    { name: 'medium', kind: 'medium', levels: ['crayon-2', 'waxy pencil'], reach: 'patch' },
    { name: 'etch', kind: 'etch', levels: ['None', 'gum alone', 'gum and tannic 1:1'], reach: 'strip' },
  ],
  control: 'None',
  stones: 1,
  patchRepeats: 2,
  seed: 7,
};
const tannic = { gramsPerLitre: 20, pH: 3.1, gum: true };

async function planned(studio: StudioUnderTest, more: object = {}) {
  const plan = await studio.send<TestPlanEntry>('POST', '/api/test-plans', { ...draft, ...more });
  const path = `/api/test-plans/${plan.body.id}/test-stones`;
  const made = await studio.send<{ testStones: TestStone[] }>('POST', path, { version: 1 });
  expect(made.status, JSON.stringify(made.body)).toBe(201);
  return made.body.testStones[0]!;
}

async function atBench(studio: StudioUnderTest, testStone: TestStone, more: object = {}) {
  const stoneId = testStone.stoneId ?? (await studio.stone('S-09', { widthMm: 320, heightMm: 420 })).id;
  const body = { version: testStone.version, stoneId, people: 2, tannic, ...more };
  return studio.send<{ testStone: TestStone; plan: KeptPlan }>(
    'POST',
    `/api/test-stones/${testStone.id}/bench`,
    body,
  );
}

it('has its steps in order for each pair of hands, and its etch by the clock', async () => {
  const studio = await studioUnderTest();
  const testStone = await planned(studio);
  const steps = `/api/test-stones/${testStone.id}/steps`;
  const draws = await studio.json<TestCourse>(`${steps}?for=draw`);
  expect(draws.stages.map(({ stage }) => stage)).toEqual(['draw']);
  expect(draws.stages[0]!.lines.map(({ what }) => what).sort()).toEqual(['crayon #2', 'waxy pencil']);
  expect(JSON.stringify(draws)).not.toContain('gum alone');
  const small = await studio.stone('S-10', { widthMm: 200, heightMm: 200 });
  const bench = `/api/test-stones/${testStone.id}/bench`;
  const tight = await studio.send<Refusal>('POST', bench, { version: 1, stoneId: small.id });
  expect(tight.status, 'a stone that it does not fit on').toBe(422);
  const busy = await studio.stone('S-11', { widthMm: 320, heightMm: 420 });
  const other = await studio.send('POST', '/api/works', { title: 'Low Water', stoneId: busy.id });
  expect(other.status, JSON.stringify(other.body)).toBe(201);
  const taken = await studio.send<Refusal>('POST', bench, { version: 1, stoneId: busy.id });
  expect([taken.status, JSON.stringify(taken.body)]).toEqual([
    409,
    expect.stringContaining('The stone S-11 carries the work Low Water.'),
  ]);
  const ready = await atBench(studio, testStone);
  expect(ready.status, JSON.stringify(ready.body)).toBe(201);
  const { plan } = ready.body.plan;
  expect(plan.schedule.feasible).toBe(true);
  const etched = plan.zones.filter(({ id }) => id.startsWith('strip-'));
  expect(etched.map(({ etch }) => etch?.name ?? 'nothing').sort()).toEqual([
    'gum alone',
    'gum and tannic 1:1',
    'nothing',
  ]);
  expect(etched.find(({ etch }) => etch === null)!.why).toContain('nothing is laid here');
  expect(plan.cautions.join(' ')).not.toContain('no rule here');
  const etches = await studio.json<TestCourse>(steps);
  expect(JSON.stringify({ ...etches, plan: null }), 'no media for whoever etches').not.toContain('crayon');
  expect(JSON.stringify(etches.plan!.request.zones)).not.toContain('crayon');
  const first = etches.stages.find(({ stage }) => stage === 'first-etch')!;
  expect(first.lines.find(({ what }) => what === 'gum alone')!.where[0]).toMatch(/^strip [123]$/);
  const sheet = await studio.call(`${steps}.pdf?for=draw`);
  expect(sheet.headers.get('content-type')).toBe('application/pdf');
  const again = await atBench(studio, ready.body.testStone, { people: 1 });
  expect(again.body.testStone.workId).toBe(ready.body.testStone.workId);
});

it('is etched in rounds where all at once can’t be kept, replicates apart', async () => {
  const studio = await studioUnderTest();
  const treatments = [
    draft.treatments[0]!,
    { name: 'etch', kind: 'etch', levels: ['gum and tannic 1:1', 'tannic'], reach: 'patch' },
  ];
  const testStone = await planned(studio, { treatments, control: null, patchRepeats: 4 });
  const { body } = await atBench(studio, testStone, { people: 1 });
  const { request, plan } = body.plan;
  expect(plan.schedule.feasible, plan.schedule.reason ?? '').toBe(true);
  expect(request.rounds?.length ?? 1).toBeGreaterThan(1);
  const zones = new Map(plan.zones.map((zone) => [zone.id, zone]));
  const [before, after] = request.rounds!;
  const last = Math.max(...before!.map((id) => zones.get(id)!.endsAt!));
  expect(Math.min(...after!.map((id) => zones.get(id)!.layFrom!))).toBeGreaterThanOrEqual(last + 60);
});

it('is run with one strip late, read, and no cause is assigned to that strip’s etch', async () => {
  const studio = await studioUnderTest();
  const testStone = await planned(studio);
  const { body } = await atBench(studio, testStone);
  const { plan, workId } = body.plan;
  const run = await studio.send<RunSummary>('POST', '/api/runs', { workId });
  const begun = Date.parse('2026-03-02T09:00:00Z');
  const late = plan.zones.find(({ etch }) => etch?.name === 'gum and tannic 1:1')!;
  const log = async (kind: string, at: number, payload: object) => {
    const event = { clientId: `${kind}-${at}-${JSON.stringify(payload)}`, kind, payload };
    const moment = new Date(begun + 1000 * at).toISOString();
    const path = `/api/runs/${run.body.id}/events`;
    expect((await studio.send('POST', path, { ...event, at: moment })).status).toBe(201);
  };
  await log('stage-started', -5, { stage: 'first-etch' });
  for (const { id, layFrom, layTo, endsAt } of plan.zones) {
    if (layFrom === null) continue;
    const delay = id === late.id ? 200 : 0;
    await log('laid', layTo! + delay, { place: id });
    await log('lifted', endsAt! + delay, { place: id });
  }
  await log('stage-ended', 900, { stage: 'first-etch' });
  const path = `/api/test-stones/${testStone.id}`;
  const sealed = await studio.send<Refusal>('GET', `${path}/answer`);
  expect(sealed).toMatchObject({ status: 409, body: { code: 'list-sealed' } });
  const drawn = await studio.photograph('held.png', 1);
  const print = await studio.photograph('print.png', 2);
  const saved = await studio.send<TestStone>('PATCH', path, {
    version: body.testStone.version,
    drawn: { photograph: drawn.id },
    prints: [{ id: 'first', name: 'First proof', photograph: print.id }],
  });
  expect(saved.status, JSON.stringify(saved.body)).toBe(200);
  await studio.send('POST', `${path}/readings`);
  while ((await studio.json<TestStoneReading>(`${path}/reading`)).judgedBy === null) await setTimeout(10);
  const shown = await studio.json<TestStone>(path);
  expect(shown.list).toMatchObject({ sealed: false, untold: 0, opened: null });
  expect(shown.patches[0]!.treatment).toHaveProperty('etch');
  const answer = await studio.json<TestStoneAnswer>(`${path}/answer`);
  const finding = answer.audit.find(({ message }) => message.includes('a minute or more later than planned'));
  expect(finding).toMatchObject({ weight: 'no-cause', code: 'one-treatment', factors: ['etch'] });
  expect(finding!.message).toContain('all of gum and tannic 1:1 and nothing else. No cause can be assigned');
});

it('says first of all that its list was opened before it was read', async () => {
  const studio = await studioUnderTest();
  const testStone = await planned(studio);
  const path = `/api/test-stones/${testStone.id}`;
  const patches = { version: 1, patches: [] };
  expect(await studio.send<Refusal>('PATCH', path, patches)).toMatchObject({ body: { code: 'list-sealed' } });
  const event = { clientId: 'o', actor: 'P.R.', kind: 'list-opened', payload: { why: 'to see it' } };
  expect((await studio.send('POST', `${path}/events`, event)).status).toBe(201);
  const answer = await studio.json<TestStoneAnswer>(`${path}/answer`);
  expect(answer.words[0]).toMatch(/^Opened before it was read: .* to P\.R\., when 12 patches had no verdict/);
  expect(answer.audit[0]).toMatchObject({ code: 'opened-early', weight: 'caution' });
});

it('is sealed in the comparison that reads it too, until the list is opened; an export says that it is whole', async () => {
  const studio = await studioUnderTest();
  const testStone = await planned(studio);
  const path = `/api/test-stones/${testStone.id}`;
  const [drawn, print] = [await studio.photograph('drawn.png', 1), await studio.photograph('print.png', 2)];
  const saved = await studio.send<TestStone>('PATCH', path, {
    version: testStone.version,
    drawn: { photograph: drawn.id },
    prints: [{ id: 'first', name: 'First proof', photograph: print.id }],
  });
  expect(saved.status, JSON.stringify(saved.body)).toBe(200);
  const asked = await studio.send<TestStone>('POST', `${path}/readings`);
  const comparison = `/api/comparisons/${asked.body.prints[0]!.comparisonId}`;
  await studio.until(asked.body.prints[0]!.comparisonId!, 'measured');
  const seen = async () => {
    const { request, record, files } = await studio.json<ComparisonEntry>(comparison);
    const whole = [
      `${comparison}/files/comparison.json`,
      `${comparison}/files/ladder.svg`,
      `${comparison}/download`,
    ];
    const statuses = await Promise.all(whole.map(async (one) => (await studio.call(one)).status));
    return { media: [...new Set(request.zones.map(({ medium }) => medium))].sort(), record, files, statuses };
  };
  const sealed = await seen();
  expect(sealed.media).toEqual(['not known']);
  expect(sealed.record?.toneCurves).toEqual([]);
  expect(sealed.files, 'pictures are looked at when it is read by eye').toEqual(['stone.png']);
  expect((await studio.call(`${comparison}/files/stone.png`)).status).toBe(200);
  expect(sealed.statuses).toEqual([409, 409, 409]);
  expect(await sealedInExport(studio.dataFolder)).toContain(`Still sealed: ${testStone.name}.`);
  const event = { clientId: 'o', actor: 'P.R.', kind: 'list-opened', payload: { why: 'to see it' } };
  expect((await studio.send('POST', `${path}/events`, event)).status).toBe(201);
  const opened = await seen();
  expect(opened.media).toEqual(['crayon-2', 'waxy-pencil']);
  expect(opened.statuses).toEqual([200, 200, 200]);
  expect(await sealedInExport(studio.dataFolder)).toBeNull();
});
