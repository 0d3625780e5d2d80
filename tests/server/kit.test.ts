import { expect, it } from 'vitest';
import type { KitEntry, LastInHand } from '../../src/records/kit.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { expectRefused } from './expectRefused.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const at = '2026-03-04T09:30:00+01:00';
let taps = 0;

async function log(studio: StudioUnderTest, run: string, kind: string, payload: object): Promise<RunEvent> {
  taps += 1;
  const body = { clientId: `tap ${taps}`, kind, at, payload };
  const answer = await studio.send<RunEvent>('POST', `/api/runs/${run}/events`, body);
  expect(answer.status).toBe(201);
  return answer.body;
}

async function begun(studio: StudioUnderTest, stage: string): Promise<RunSummary> {
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water', { stage });
  return (await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id })).body;
}

it('keeps tools and set-ups, lists them by tool, and takes them out without losing them', async () => {
  const studio = await studioUnderTest();
  const roller = await studio.send<KitEntry>('POST', '/api/kit', { tool: 'roller', name: 'Heron' });
  expect(roller).toMatchObject({ status: 201, body: { nap: '', conditionedOn: null, version: 1 } });
  await studio.send('POST', '/api/kit', { tool: 'paper', name: 'Rag', damp: true });
  const path = `/api/kit/${roller.body.id}`;
  const saved = await studio.send<KitEntry>('PATCH', path, { version: 1, tool: 'roller', nap: 'leather' });
  expect(saved.body).toMatchObject({ name: 'Heron', nap: 'leather', version: 2 });
  const late = await studio.send<Refusal<KitEntry>>('PATCH', path, {
    version: 1,
    tool: 'roller',
    nap: 'felt',
  });
  expect([late.status, late.body.code, late.body.current?.version]).toEqual([409, 'stale-save', 2]);
  const rollers = await studio.json<{ kit: KitEntry[] }>('/api/kit?tool=roller&search=leather');
  expect(rollers.kit.map(({ name }) => name)).toEqual(['Heron']);
  await studio.send('PUT', `${path}/put-by`, { version: 2, putBy: true });
  const left = await studio.json<{ kit: KitEntry[] }>('/api/kit');
  expect(left.kit.map(({ name }) => name)).toEqual(['Rag']);
  expect((await studio.json<KitEntry>(path)).putBy).toBe(true);
  expect((await studio.call('/api/kit/none')).status).toBe(404);
});

it('refuses what can not be a tool, and says which field', async () => {
  const studio = await studioUnderTest();
  await expectRefused(
    studio,
    ['POST', '/api/kit'],
    [
      [{ tool: 'spoon', name: 'x' }, 'body-malformed', 'tool'],
      [{ tool: 'roller' }, 'body-malformed', 'name'],
      [{ tool: 'ink', name: 'x', modifierPercent: 101 }, 'body-malformed', 'modifierPercent'],
      [{ tool: 'press', name: 'x', scraperMm: 0 }, 'body-malformed', 'scraperMm'],
    ],
  );
  const { body } = await studio.send<KitEntry>('POST', '/api/kit', { tool: 'cloth', name: 'Muslin' });
  const other = { version: 1, tool: 'paper', damp: true };
  await expectRefused(studio, ['PATCH', `/api/kit/${body.id}`], [[other, 'body-malformed', 'tool']]);
});

it('remembers the newest pick of each tool over all runs', async () => {
  const studio = await studioUnderTest();
  expect(await studio.json('/api/kit/last-in-hand')).toEqual({ inHand: [] });
  const one = await begun(studio, 'drawn');
  const { body: two } = await studio.send<RunSummary>('POST', '/api/runs', { workId: one.workId });
  await log(studio, one.id, 'picked', { tool: 'roller', id: 'heron', words: 'Heron' });
  await log(studio, one.id, 'picked', { tool: 'ink', words: 'black' });
  await log(studio, two.id, 'picked', { tool: 'roller', id: 'tern', words: 'Tern' });
  const { inHand } = await studio.json<{ inHand: LastInHand[] }>('/api/kit/last-in-hand');
  expect(inHand).toMatchObject([
    { tool: 'roller', id: 'tern', words: 'Tern', runId: two.id },
    { tool: 'ink', id: null, words: 'black', runId: one.id },
  ]);
});

it('a pick that was taken back is not the last one, until its undo is taken back too', async () => {
  const studio = await studioUnderTest();
  const run = await begun(studio, 'drawn');
  const rollers = async () => {
    const { inHand } = await studio.json<{ inHand: LastInHand[] }>('/api/kit/last-in-hand');
    return inHand.map(({ words }) => words);
  };
  const heron = await log(studio, run.id, 'picked', { tool: 'roller', id: 'heron', words: 'Heron' });
  const tern = await log(studio, run.id, 'picked', { tool: 'roller', id: 'tern', words: 'Tern' });
  const undo = await log(studio, run.id, 'undo', { clientId: tern.clientId });
  expect(await rollers()).toEqual(['Heron']);
  await log(studio, run.id, 'undo', { clientId: undo.clientId });
  expect(await rollers()).toEqual(['Tern']);
  await log(studio, run.id, 'undo', { clientId: tern.clientId });
  await log(studio, run.id, 'undo', { clientId: heron.clientId });
  expect(await rollers()).toEqual([]);
});

it('a run moves the stage of its work, and an undo takes it back to where the run found it', async () => {
  const studio = await studioUnderTest();
  const run = await begun(studio, 'drawn');
  const work = () => studio.json<WorkEntry>(`/api/works/${run.workId}`);
  await log(studio, run.id, 'stage-started', { stage: 'first-etch' });
  expect(await work()).toMatchObject({ stage: 'drawn', version: 1 });
  const ended = await log(studio, run.id, 'stage-ended', { stage: 'first-etch' });
  expect(await work()).toMatchObject({ stage: 'first-etch', version: 2 });
  await log(studio, run.id, 'undo', { clientId: ended.clientId });
  expect(await work()).toMatchObject({ stage: 'drawn', version: 3 });
  await log(studio, run.id, 'remembered', { stage: 'washout', seconds: 120 });
  expect((await work()).stage).toBe('washed-out');
  // what a person types stays until the log tells something else
  await studio.send('PATCH', `/api/works/${run.workId}`, { version: 4, stage: 'rolled-up' });
  await log(studio, run.id, 'stage-started', { stage: 'base' });
  expect(await work()).toMatchObject({ stage: 'rolled-up', version: 5 });
  const listed = await studio.json<{ works: { stage: string }[] }>('/api/works?stage=rolled-up');
  expect(listed.works).toHaveLength(1);
});

it('the invented studio has a kit to pick from', async () => {
  const studio = await studioUnderTest({ studio: sampleStudio() });
  const { kit } = await studio.json<{ kit: KitEntry[] }>('/api/kit?limit=100');
  expect(new Set(kit.map(({ tool }) => tool))).toEqual(new Set(['roller', 'ink', 'press', 'cloth', 'paper']));
  expect(kit.every(({ sample }) => sample)).toBe(true);
});
