import { expect, it } from 'vitest';
import type { Edition } from '../../src/records/edition.ts';
import type { LeavingList, Rack, WaitRecord } from '../../src/records/rack.ts';
import type { RunSummary } from '../../src/records/run.ts';
import type { StoneSummary } from '../../src/records/stoneEntry.ts';
import type { WorkEntry, WorkSummary } from '../../src/records/workEntry.ts';
import { postJson } from './serverUnderTest.ts';
import { rectangle, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const hour = 3_600_000;
const ago = (ms: number) => new Date(Date.now() - ms).toISOString();

/** Begins a run and gives what logs in it so long ago. */
async function begun(studio: StudioUnderTest, workId: string) {
  const run = await studio.send<RunSummary>('POST', '/api/runs', { workId });
  let count = 0;
  const log = async (kind: string, payload: object, msAgo = 0) => {
    const tap = {
      clientId: `tap ${++count}`,
      kind,
      payload,
      at: ago(msAgo),
      sentAt: ago(0),
      device: 'phone',
    };
    expect((await studio.send('POST', `/api/runs/${run.body.id}/events`, tap)).status).toBe(201);
  };
  return { id: run.body.id, log };
}

it('lists say whether a stone is gummed, and the rack what to do now', async () => {
  const studio = await studioUnderTest();
  const inked = await studio.stone('S-21');
  const bare = await studio.stone('S-22');
  await studio.stone('S-23');
  const work = await studio.work(inked.id, 'Low Water', { stage: 'rolled-up' });
  await studio.work(bare.id, 'High Water');
  const gumOf = async () => {
    const { stones } = await studio.json<{ stones: StoneSummary[] }>('/api/stones');
    return stones.map(({ gum }) => gum);
  };
  const no = { gummed: 'no', gumNow: false };
  expect(await gumOf()).toEqual([{ gummed: 'unknown', gumNow: false }, no, null]);
  const { log } = await begun(studio, work.id);
  await log('stage-started', { stage: 'proofs' });
  expect((await gumOf())[0]).toEqual({ gummed: 'no', gumNow: true });
  const { works } = await studio.json<{ works: WorkSummary[] }>('/api/works');
  expect(works.find(({ id }) => id === work.id)?.gum).toEqual({ gummed: 'no', gumNow: true });
  const { lines, reminders } = await studio.json<Rack>('/api/rack');
  expect(lines.map(({ title, standing }) => [title, standing.gumNow])).toEqual([
    ['Low Water', true],
    ['High Water', false],
  ]);
  expect(lines[0]).toMatchObject({ widthMm: 400, heightMm: 500, left: null });
  expect(reminders).toEqual([]);
});

it('leaving: what is ticked is logged, the rack says what was done and what it changed', async () => {
  const studio = await studioUnderTest();
  const { id: stoneId } = await studio.stone('S-24');
  const work = await studio.work(stoneId, 'Low Water', { stage: 'rolled-up' });
  const typed = await studio.stone('S-25');
  const halfway = { kind: 'halfway', stage: 'rolled-up', gummed: 'no', history: [] };
  const other = await studio.work(typed.id, 'Neap', { stage: 'rolled-up', origin: halfway });
  const { id, log } = await begun(studio, work.id);
  await log('stage-started', { stage: 'proofs' });
  const list = await studio.json<LeavingList>('/api/rack/leaving');
  expect(list.stones.map(({ stoneName, runId }) => [stoneName, runId])).toEqual([
    ['S-24', id],
    ['S-25', null],
  ]);
  const [gum] = list.stones[0]!.steps;
  expect(gum).toMatchObject({ words: 'gum it, buff it tight', logs: { kind: 'gummed' } });
  await log(gum!.logs!.kind, gum!.logs!.payload);
  await log('left', { done: [gum!.words, 'cover it'] });
  const { lines } = await studio.json<Rack>('/api/rack');
  expect(lines.map(({ workId }) => workId)).toEqual([other.id, work.id]);
  expect(lines[1]).toMatchObject({
    left: { done: ['gum it, buff it tight', 'cover it'] },
    standing: { gummed: 'yes', gumNow: false },
  });
  const again = await studio.json<LeavingList>('/api/rack/leaving');
  expect(again.stones.find(({ workId }) => workId === work.id)!.steps.map(({ words }) => words)).toEqual([
    'cover it',
  ]);
  await log('gum-off', {});
  expect(
    (await studio.json<Rack>('/api/rack')).lines.find(({ workId }) => workId === work.id)!.left,
  ).toBeNull();
});

it('leaving: asks for stones that are perhaps not gummed, and of the room what nobody logged', async () => {
  const studio = await studioUnderTest();
  const { id: stoneId } = await studio.stone('S-27');
  await studio.work(stoneId, 'Low Water', { stage: 'rolled-up' });
  const etched = await studio.stone('S-28');
  await studio.work(etched.id, 'Spring Tide', { stage: 'first-etch' });
  const list = await studio.json<LeavingList>('/api/rack/leaving');
  const look = { words: expect.stringContaining('see whether it is gummed') };
  expect(list.stones).toMatchObject([
    { stoneName: 'S-27', steps: [look, {}] },
    { stoneName: 'S-28', steps: [look, {}] },
  ]);
  expect(list.room).toHaveLength(3);
  expect(list.room.every((words) => words.startsWith('if you '))).toBe(true);
});

it('what is printed and gummed at the press stands on the rack, and on the list before leaving', async () => {
  const studio = await studioUnderTest();
  const { id: stoneId } = await studio.stone('S-29');
  const work = await studio.work(stoneId, 'Low Water', { stage: 'first-etch' });
  const { body: edition } = await studio.send<Edition>('POST', `/api/works/${work.id}/editions`, {
    title: 'Twelve Tides',
    size: 5,
  });
  let count = 0;
  const log = async (kind: string, payload: object, msAgo: number) => {
    const entry = { clientId: `e${++count}`, kind, payload, at: ago(msAgo) };
    expect((await studio.send('POST', `/api/editions/${edition.id}/ledger`, entry)).status).toBe(201);
  };
  const standing = async () => (await studio.json<Rack>('/api/rack')).lines[0]!.standing;
  expect(await standing()).toMatchObject({ gummed: 'unknown', gumNow: false });
  await log('impression', { verdict: 'good' }, 5000);
  expect(await standing()).toMatchObject({ gummed: 'no', inked: 'yes', gumNow: true });
  const list = await studio.json<LeavingList>('/api/rack/leaving');
  expect(list.stones[0]!.steps[0]!.words).toBe('gum it, buff it tight');
  await log('paused', { gummed: true }, 4000);
  expect(await standing()).toMatchObject({ gummed: 'yes', gumNow: false });
  const covered = await studio.json<LeavingList>('/api/rack/leaving');
  expect(covered.stones[0]!.steps.map(({ words }) => words)).toEqual(['cover it']);
  const { body: run } = await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id });
  const off = { clientId: 'off', kind: 'gum-off', payload: {}, at: ago(3000), sentAt: ago(0) };
  await studio.send('POST', `/api/runs/${run.id}/events`, off);
  expect(await standing()).toMatchObject({ gummed: 'no', gumNow: true });
  await log('undo', { clientId: 'e2' }, 2000);
  await log('paused', { gummed: true }, 1000);
  expect(await standing()).toMatchObject({ gummed: 'yes', gumNow: false });
  await studio.send('PUT', `/api/editions/${edition.id}/put-by`, { version: 1, putBy: true });
  expect((await standing()).gummed).toBe('no');
});

it('a closed work reminds of regraining, one that is regrained is gone from the rack', async () => {
  const studio = await studioUnderTest();
  const { id: stoneId } = await studio.stone('S-26');
  const { id } = await studio.work(stoneId, 'Low Water', { stage: 'edition' });
  const { log } = await begun(studio, id);
  await log('stage-ended', { stage: 'close-down' }, 96 * hour);
  const { reminders } = await studio.json<Rack>('/api/rack');
  expect(reminders.map(({ about }) => about)).toEqual(['storage', 'regrain']);
  await log('stage-ended', { stage: 'regrain' });
  expect(await studio.json<Rack>('/api/rack')).toEqual({ lines: [], reminders: [] });
});

it('the room’s own record is unknown under three stones, then a share with its interval', async () => {
  const studio = await studioUnderTest();
  const records = async () => (await studio.json<{ waits: WaitRecord[] }>('/api/rack/waits')).waits;
  expect(await records()).toEqual([]);
  for (const index of [1, 2, 3]) {
    const stone = await studio.stone(`S-3${index}`);
    const work = await studio.work(stone.id, 'Low Water');
    const { log } = await begun(studio, work.id);
    await log('stage-started', { stage: 'first-etch' }, 21 * hour);
    await log('stage-ended', { stage: 'first-etch' }, 20 * hour);
    await log('stage-started', { stage: 'washout' }, 2 * hour);
    if (index === 1)
      expect(await records()).toMatchObject([{ wait: 'first-rest', bands: [], unmeasured: 1 }]);
    await printedOf(studio, work, index);
    const [record, ...more] = await records();
    expect(more).toEqual([]);
    const [band] = record!.bands;
    expect(band).toMatchObject({ verdict: 'best', waits: index, zones: index, held: index, undecided: 0 });
    expect(band!.longestSeconds / 3600).toBeCloseTo(18, 2);
    if (index < 3) expect(band!.share).toBeNull();
    else expect(band!.share).toMatchObject({ value: 1, high: 1, basis: 'this room' });
  }
});

it('a print that hangs at two works tells of the wait of neither, unless its zones are one’s own', async () => {
  const studio = await studioUnderTest();
  const works: WorkEntry[] = [];
  for (const name of ['S-36', 'S-37']) {
    const { id } = await studio.stone(name);
    const work = await studio.work(id, 'Low Water');
    works.push(work);
    const { log } = await begun(studio, work.id);
    await log('stage-started', { stage: 'first-etch' }, 21 * hour);
    await log('stage-ended', { stage: 'first-etch' }, 20 * hour);
    await log('stage-started', { stage: 'washout' }, 2 * hour);
  }
  const waits = async () => {
    const { waits: records } = await studio.json<{ waits: WaitRecord[] }>('/api/rack/waits');
    return records.map(({ bands, unmeasured }) => [bands.map((band) => band.waits), unmeasured]);
  };
  const [one, other] = works as [WorkEntry, WorkEntry];
  await printedOf(studio, one, 6);
  expect(await waits()).toEqual([[[1], 1]]);
  const { photographs, version } = await studio.json<WorkEntry>(`/api/works/${one.id}`);
  const shared = { version: (await studio.json<WorkEntry>(`/api/works/${other.id}`)).version, photographs };
  expect((await studio.send('PATCH', `/api/works/${other.id}`, shared)).status).toBe(200);
  expect(await waits()).toEqual([[[], 2]]);
  const zones = [{ id: 'sky', name: 'Sky', medium: 'tusche-water', polygonMm: rectangle(10, 10, 50, 50) }];
  expect((await studio.send('PATCH', `/api/works/${one.id}`, { version, zones })).status).toBe(200);
  expect(await waits()).toEqual([[[1], 1]]);
});

/** A measured comparison with one drawn zone that held and a stop-out, of a print attached to the work. */
async function printedOf(studio: StudioUnderTest, work: WorkEntry, index: number): Promise<void> {
  const drawn = await studio.photograph('held.png', 10 + index);
  const print = await studio.photograph('print.png', 40 + index);
  const photographs = [{ photograph: print.id, state: 'print' }];
  const { version } = await studio.json<WorkEntry>(`/api/works/${work.id}`);
  expect((await studio.send('PATCH', `/api/works/${work.id}`, { version, photographs })).status).toBe(200);
  const zones = [
    { id: 'sky', name: 'Sky', medium: 'tusche-water', polygonMm: rectangle(10, 10, 50, 50) },
    {
      id: 'moon',
      name: 'Moon',
      medium: 'stop-out',
      intention: 'stop-out',
      polygonMm: rectangle(100, 10, 50, 50),
    },
  ];
  const sides = { stone: { photograph: drawn.id }, proof: { photograph: print.id } };
  const request = { title: `Low Water ${index}`, sizeMm: [300, 400], ...sides, zones };
  const { id } = await studio.json<{ id: string }>('/api/comparisons', postJson(request));
  await studio.until(id, 'measured');
}
