import { beforeEach, expect, it } from 'vitest';
import type { AspectChange } from '../../src/records/bench.ts';
import type { InkEntry } from '../../src/records/ink.ts';
import type { InkAnswer } from '../../src/records/inkAnswer.ts';
import type { RunSummary } from '../../src/records/run.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

let studio: StudioUnderTest;
beforeEach(async () => {
  studio = await studioUnderTest();
});

const mixed = async (draft: object) => (await studio.send<InkEntry>('POST', '/api/inks', draft)).body;

it('keeps a mix with its shares, grams, strings and what the prints said', async () => {
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const ink = await mixed({
    name: 'Mudbank',
    workId: work.id,
    softParts: 7,
    stiffParts: 3,
    inkGrams: 50,
    modifier: 'magnesium carbonate',
    modifierPercent: 5,
  });
  expect(ink).toMatchObject({
    softPercent: 70,
    softGrams: 35,
    stiffGrams: 15,
    modifierGrams: 2.5,
    workTitle: 'Low Water',
    verdict: null,
  });
  expect(ink.modifierOfWholePercent).toBeCloseTo(4.7619, 4);
  const string = { at: '2026-03-04T10:00:00Z', cm: 1.5, note: 'on the slab' };
  const judged = { version: 1, strings: [string], verdict: 'good' };
  const saved = await studio.send<InkEntry>('PATCH', `/api/inks/${ink.id}`, judged);
  expect(saved.body).toMatchObject({ version: 2, verdict: 'good', softParts: 7, strings: [string] });
  const late = await studio.send<Refusal<InkEntry>>('PATCH', `/api/inks/${ink.id}`, judged);
  expect(late).toMatchObject({ status: 409, body: { code: 'stale-save', current: { version: 2 } } });
  await mixed({ name: 'Reeds', softParts: 100, stiffParts: 0 });
  const names = async (asked: string) =>
    (await studio.json<{ inks: InkEntry[] }>(`/api/inks${asked}`)).inks.map(({ name }) => name);
  expect(await names('')).toEqual(['Reeds', 'Mudbank']);
  expect(await names('?verdict=good')).toEqual(['Mudbank']);
  expect(await names(`?work=${work.id}`)).toEqual(['Mudbank']);
  expect(await names('?search=magnesium')).toEqual(['Mudbank']);
  await studio.send('PUT', `/api/inks/${ink.id}/put-by`, { version: 2, putBy: true });
  expect(await names('')).toEqual(['Reeds']);
  const shelved = await studio.send<Refusal>('PATCH', `/api/inks/${ink.id}`, { version: 3, note: 'x' });
  expect(shelved).toMatchObject({ status: 409, body: { code: 'put-by' } });
  expect((await studio.send('GET', '/api/inks/none')).status).toBe(404);
});

it('claims nothing of a mix that was not weighed, and refuses one of nothing', async () => {
  expect(await mixed({ name: 'By the knife', softParts: 2 })).toMatchObject({
    softPercent: null,
    softGrams: null,
    modifierGrams: null,
    modifierOfWholePercent: null,
    workTitle: null,
  });
  for (const [draft, path, status] of [
    [{ name: 'Nothing', softParts: 0, stiffParts: 0 }, 'softParts', 400],
    [{ name: 'Tomorrow', madeOn: '2199-01-01' }, 'madeOn', 400],
    [{ name: 'Whose', workId: 'none' }, 'workId', 422],
    [{ name: ' ' }, 'name', 400],
  ] as const) {
    const refused = await studio.send<Refusal>('POST', '/api/inks', draft);
    expect([refused.status, refused.body.path], path).toEqual([status, path]);
  }
});

it('is told by what changed where a run picked it', async () => {
  const stone = await studio.stone('S-03');
  const work = await studio.work(stone.id, 'Slack Water');
  const run = async (ink: InkEntry) => {
    const { id } = (await studio.send<RunSummary>('POST', '/api/runs', { workId: work.id })).body;
    const payload = { tool: 'ink', id: ink.id, words: ink.name };
    const at = '2026-03-04T10:00:00Z';
    await studio.send('POST', `/api/runs/${id}/events`, { clientId: 'tap', kind: 'picked', at, payload });
    return id;
  };
  const first = await run(await mixed({ name: 'Black', softParts: 7, stiffParts: 3 }));
  const second = await run(await mixed({ name: 'Black', softParts: 1, stiffParts: 1 }));
  const answer = await studio.json<{ changes: AspectChange[] }>(`/api/runs/${second}/changes?since=${first}`);
  const of = (name: string) => answer.changes.find((change) => change.name === name);
  expect(of('ink')).toMatchObject({ verdict: 'unchanged', later: 'Black' });
  expect(of('soft part of the ink')).toMatchObject({ earlier: '70 % soft', later: '50 % soft' });
  expect(of('modifier in the ink')).toMatchObject({ verdict: 'unknown' });
});

it('says where to start a work’s ink from, by its drawing', async () => {
  const stone = await studio.stone('S-02');
  const work = await studio.work(stone.id, 'Neap');
  const answer = await studio.json<InkAnswer>(`/api/works/${work.id}/ink?proofs=5&edition=15`);
  // 450 cm² of sky and 330 of crayon #5 are light, 60 of pen lines middle, 36 of post solid
  expect(answer.parts).toEqual({ soft: 94, stiff: 6 });
  expect(answer.proofsGrams!.low).toBeGreaterThan(30);
  expect(answer.mix!.high.softGrams).toBeGreaterThan(answer.mix!.low.softGrams);
  const asked = await studio.send<InkAnswer>('POST', '/api/inks/question', { areasCm2: { dark: 100 } });
  expect(asked.body.parts).toEqual({ soft: 0, stiff: 100 });
  expect((await studio.send('GET', '/api/works/none/ink')).status).toBe(404);
});
