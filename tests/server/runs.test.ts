import { expect, it } from 'vitest';
import { lineStageSchema } from '../../src/contract/lineStage.ts';
import type { AspectChange, RunState, StageRule } from '../../src/records/bench.ts';
import type { LeavingList, Rack } from '../../src/records/rack.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { expectRefused } from './expectRefused.ts';
import { type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const at = '2026-03-04T09:30:00+01:00';

async function aRun(studio: StudioUnderTest): Promise<RunSummary> {
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const begun = await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id });
  expect(begun.status).toBe(201);
  return begun.body;
}

it('keeps what happened in order, each with its client id, and a retry is the same event', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const log = (body: object) => studio.send<RunEvent>('POST', `/api/runs/${run.id}/events`, body);
  const first = await log({ clientId: 'a', kind: 'note', at, payload: { text: 'rain' } });
  expect(first).toMatchObject({ status: 201, body: { sequence: 1, clientId: 'a', kind: 'note', at } });
  const second = await log({ clientId: 'b', kind: 'laid', at, payload: { place: 'sky' }, actor: 'P.R.' });
  expect(second.body).toMatchObject({ sequence: 2, actor: 'P.R.', device: null, payload: { place: 'sky' } });
  for (let again = 0; again < 10; again++) {
    expect(await log({ clientId: 'a', kind: 'note', at, payload: { text: 'rain' } })).toEqual(first);
  }
  const third = await log({ clientId: 'c', kind: 'note', at: Date.parse(at) });
  expect(third.body).toMatchObject({ sequence: 3, at: new Date(at).toISOString(), payload: {} });
  const all = await studio.json<{ events: RunEvent[] }>(`/api/runs/${run.id}/events`);
  expect(all.events.map(({ clientId }) => clientId)).toEqual(['a', 'b', 'c']);
  expect(all.events[0]).toEqual(first.body);
  const some = await studio.json<{ events: RunEvent[] }>(`/api/runs/${run.id}/events?after=1&limit=1`);
  expect(some.events.map(({ sequence }) => sequence)).toEqual([2]);
  expect(await studio.json(`/api/runs/${run.id}/events?after=3`)).toEqual({ events: [] });
});

it('twenty people at once make twenty events without a gap; begun twice under one id is one run', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const sent = Array.from({ length: 20 }, (_, index) =>
    studio.send<RunEvent>('POST', `/api/runs/${run.id}/events`, {
      clientId: `tap ${index % 10}`,
      kind: 'moved',
      at,
      payload: { place: 'sky' },
      device: index < 10 ? 'phone' : 'laptop',
    }),
  );
  const sequences = (await Promise.all(sent)).map(({ body }) => body.sequence);
  expect(new Set(sequences)).toEqual(new Set([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]));
  const body = { workId: run.workId, clientId: 'evening' };
  const [one, two] = await Promise.all([
    studio.send<RunSummary>('POST', '/api/runs', body),
    studio.send<RunSummary>('POST', '/api/runs', body),
  ]);
  expect(one.body).toEqual(two.body);
  const { runs } = await studio.json<{ runs: RunSummary[] }>(`/api/works/${run.workId}/runs`);
  expect(runs.map(({ id }) => id)).toEqual([one.body.id, run.id]);
});

it('refuses what can not be read, and says which field', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const path = `/api/runs/${run.id}/events`;
  const good = { clientId: 'a', kind: 'note', at, payload: {} };
  await expectRefused(
    studio,
    ['POST', path],
    [
      [{ ...good, kind: 'danced' }, 'body-malformed', 'kind'],
      [{ ...good, at: 'yesterday' }, 'body-malformed', 'at'],
      [{ ...good, at: 9e15 }, 'body-malformed', 'at'],
      [{ clientId: 'a', kind: 'note' }, 'body-malformed', 'at'],
      [{ ...good, clientId: '' }, 'body-malformed', 'clientId'],
      [{ ...good, kind: 'laid' }, 'body-malformed', 'payload.place'],
      [{ ...good, kind: 'correction', payload: { stage: 'draw' } }, 'body-malformed', 'payload.stage'],
      [{ ...good, payload: { text: 'x'.repeat(30_000) } }, 'body-malformed', 'payload'],
    ],
  );
  await expectRefused(
    studio,
    ['POST', '/api/runs'],
    [
      [{ workId: 'none' }, 'reference-unknown', 'workId'],
      [{ workId: run.workId, planId: 'none' }, 'reference-unknown', 'planId'],
    ],
  );
  expect((await studio.send('POST', '/api/runs/none/events', good)).status).toBe(404);
  expect((await studio.send('GET', '/api/runs/none/events')).status).toBe(404);
  expect(await studio.json(path)).toEqual({ events: [] });
});

it('tells every page what was kept, once', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const response = await studio.call('/api/events');
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  const send = (clientId: string) =>
    studio.send('POST', `/api/runs/${run.id}/events`, { clientId, kind: 'note', at });
  for (const clientId of ['a', 'a', 'b']) await send(clientId);
  let text = '';
  while (!text.includes('"clientId":"b"')) text += (await reader.read()).value ?? '';
  await reader.cancel();
  const told = [...text.matchAll(/^event: run\ndata: (.*)$/gm)].map(([, data]) => JSON.parse(data!));
  expect(told.map(({ event }) => event.clientId)).toEqual(['a', 'b']);
  expect(told[0]).toMatchObject({ runId: run.id, workId: run.workId, event: { sequence: 1 } });
});

it('shows a run as it stands, the rack with what can wait least first, and what changed', async () => {
  const studio = await studioUnderTest({ studio: sampleStudio() });
  const run = async (workId: string) => {
    const begun = await studio.send<RunSummary>('POST', '/api/runs', { workId });
    let count = 0;
    const log = async (kind: string, payload: object) => {
      const body = { clientId: `tap ${++count}`, kind, at: new Date().toISOString(), payload };
      expect((await studio.send('POST', `/api/runs/${begun.body.id}/events`, body)).status).toBe(201);
    };
    return { id: begun.body.id, log };
  };
  const planned = await studio.send('POST', '/api/works/saltreach-high-water/plans', {});
  expect(planned.status).toBe(201);
  const high = await run('saltreach-high-water');
  await high.log('laid', { place: 'clouds' });
  await high.log('note', { text: 'rain on the roof' });
  await high.log('undo', { clientId: 'tap 2' });
  const state = await studio.json<RunState>(`/api/runs/${high.id}`);
  expect(state).toMatchObject({
    events: 3,
    stages: [{ stage: 'first-etch', state: 'open' }],
    contacts: [{ place: 'clouds', name: 'Clouds', liftedAt: null }],
    facts: [],
    standing: { wet: true, next: { words: 'lift and buff the etch' } },
  });
  expect(state.moves!.next.length).toBe(1);
  const low = await run('saltreach-low-water');
  await low.log('stage-started', { stage: 'proofs' });
  await low.log('picked', { tool: 'ink', words: '70:30 soft and stiff' });
  const { lines } = await studio.json<Rack>('/api/rack');
  expect(lines.map(({ title }) => title).slice(0, 2)).toEqual(['Low Water', 'High Water']);
  expect(lines.length).toBe(5);
  expect(lines[0]!.standing).toMatchObject({ gumNow: true, gummed: 'no' });
  const leaving = await studio.json<LeavingList>('/api/rack/leaving');
  expect(leaving.stones.map(({ stoneName, steps }) => [stoneName, steps[0]?.words])).toEqual([
    ['S-01', 'gum it, buff it tight'],
    ['S-02', expect.stringContaining('lift the etch')],
    ['S-05', expect.stringContaining('see whether it is gummed')],
  ]);
  await low.log('gummed', {});
  const after = await studio.json<Rack>('/api/rack');
  expect(after.lines[0]!.title).toBe('High Water');
  const { changes } = await studio.json<{ changes: AspectChange[] }>(
    `/api/runs/${low.id}/changes?since=${high.id}`,
  );
  expect(changes.find(({ name }) => name === 'stone')).toMatchObject({ earlier: 'S-02', later: 'S-01' });
  expect(changes.find(({ name }) => name === 'ink')).toMatchObject({ verdict: 'unknown', earlier: null });
  const works = '/api/works/saltreach-neap/changes?since=saltreach-low-water';
  expect((await studio.json<{ changes: AspectChange[] }>(works)).changes.length).toBeGreaterThan(5);
  const { stages } = await studio.json<{ stages: StageRule[] }>('/api/stages');
  expect(stages.map(({ stage }) => stage)).toEqual(lineStageSchema.options);
  expect((await studio.send('GET', '/api/runs/none')).status).toBe(404);
});

it('a run without a plan knows the drawing as long as nobody has changed the work since', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01');
  const sky = {
    id: 'sky',
    name: 'Sky',
    medium: 'crayon-4',
    polygonMm: [
      [50, 50],
      [90, 50],
      [90, 90],
    ],
  };
  const [drawn, other] = await Promise.all([
    studio.work(stone.id, 'Low Water', { zones: [sky] }),
    studio.work(stone.id, 'Neap', { zones: [] }),
  ]);
  const begun = await studio.send<RunSummary>('POST', '/api/runs', { workId: drawn.id });
  const changed = async () => {
    const path = `/api/runs/${begun.body.id}/changes?since=${other.id}`;
    return (await studio.json<{ changes: AspectChange[] }>(path)).changes.map(({ name }) => name);
  };
  expect(await changed()).toContain('medium of Sky');
  const saved = await studio.send('PATCH', `/api/works/${drawn.id}`, {
    version: 1,
    zones: [{ ...sky, medium: 'pen' }],
  });
  expect(saved.status, JSON.stringify(saved.body)).toBe(200);
  expect(await changed()).not.toContain('medium of Sky');
  expect(await changed()).toContain('the drawing');
});

it('what was poured is kept with how it is known, and stands in the run; an amount without a measure is refused', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const log = (clientId: string, kind: string, payload: object) =>
    studio.send<RunEvent>('POST', `/api/runs/${run.id}/events`, { clientId, kind, at, payload });
  const solvent = {
    material: 'washout solvent',
    how: 'measured',
    amount: { value: 20, unit: 'ml' },
    mark: 5,
  };
  await log('a', 'stage-started', { stage: 'washout' });
  expect((await log('b', 'poured', solvent)).status).toBe(201);
  expect((await log('c', 'poured', { material: 'talc', how: 'not measured', amount: null })).status).toBe(
    201,
  );
  await log('d', 'poured', { ...solvent, amount: { value: 900, unit: 'ml' } });
  await log('e', 'undo', { clientId: 'd' });
  const { poured } = await studio.json<RunState>(`/api/runs/${run.id}`);
  expect(poured).toMatchObject([
    { material: 'washout solvent', stage: 'washout', amount: { value: 20, low: 17.5, high: 22.5 } },
    { material: 'talc', stage: 'washout', how: 'not measured', amount: null },
  ]);
  const wrong = (payload: object, code: string, field: string) =>
    [{ clientId: 'f', kind: 'poured', at, payload }, code, `payload.${field}`] as const;
  await expectRefused(
    studio,
    ['POST', `/api/runs/${run.id}/events`],
    [
      wrong({ ...solvent, how: 'not measured' }, 'body-malformed', 'amount'),
      wrong({ ...solvent, amount: null }, 'body-malformed', 'amount'),
      wrong({ ...solvent, amount: { value: -1, unit: 'ml' } }, 'body-malformed', 'amount.value'),
      wrong({ ...solvent, material: '' }, 'body-malformed', 'material'),
    ],
  );
});

it('a run that had no plan follows the first one made before anything was etched, and no later one', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const read = () => studio.json<RunState>(`/api/runs/${run.id}`);
  const plan = () =>
    studio.send<{ id: string }>('POST', `/api/works/${run.workId}/plans`, { tableId: 'tannic' });
  const log = (clientId: string, kind: string, payload: object) =>
    studio.send<RunEvent>('POST', `/api/runs/${run.id}/events`, { clientId, kind, at, payload });
  await log('a', 'stage-started', { stage: 'edges' });
  await log('b', 'stage-ended', { stage: 'edges' });
  expect((await read()).planId).toBeNull();
  const first = await plan();
  expect(first.status).toBe(201);
  expect((await read()).planId).toBe(first.body.id);
  await plan();
  expect((await read()).planId).toBe(first.body.id);

  const late = await aRunWithout(studio);
  await studio.send('POST', `/api/runs/${late.id}/events`, {
    clientId: 'a',
    kind: 'laid',
    at,
    payload: { place: 'ground' },
  });
  await studio.send('POST', `/api/works/${late.workId}/plans`, { tableId: 'tannic' });
  expect((await studio.json<RunState>(`/api/runs/${late.id}`)).planId).toBeNull();
});

async function aRunWithout(studio: StudioUnderTest): Promise<RunSummary> {
  const stone = await studio.stone('S-02');
  const work = await studio.work(stone.id, 'Neap');
  return (await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id })).body;
}

it('a stone from which a work is being grained away is not called level by a reading from before', async () => {
  const studio = await studioUnderTest();
  const run = await aRun(studio);
  const { stoneId } = await studio.json<{ stoneId: string }>(`/api/works/${run.workId}`);
  const stone = () => studio.json<StoneEntry>(`/api/stones/${stoneId}`);
  const log = (clientId: string, kind: string, payload: object) =>
    studio.send('POST', `/api/runs/${run.id}/events`, { clientId, kind, at, payload });
  const read = async (straightedge: readonly object[]) =>
    studio.send('PATCH', `/api/stones/${stoneId}`, { version: (await stone()).version, straightedge });
  const before = { at: '2026-03-01T09:00:00.000Z', gapMm: 0.05, where: '' };
  await read([before]);
  expect((await stone()).verdict.level).toBe('level');
  await log('a', 'stage-started', { stage: 'regrain' });
  expect((await stone()).verdict.level).toBe('not measured');
  await log('b', 'undo', { clientId: 'a' });
  expect((await stone()).verdict.level).toBe('level');
  await log('c', 'stage-started', { stage: 'regrain' });
  await log('d', 'stage-ended', { stage: 'regrain' });
  expect((await stone()).verdict.level).toBe('not measured');
  await read([before, { at: '2026-03-06T09:00:00.000Z', gapMm: 0.2, where: '' }]);
  expect((await stone()).verdict.level).toBe('not level');
});
