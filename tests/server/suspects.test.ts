import { describe, expect, it } from 'vitest';
import { pullSuspectsSchema, suspectsAnswerSchema } from '../../src/contract/suspects.ts';
import type { PullSuspects, SuspectsAnswer } from '../../src/records/suspects.ts';
import { postJson, serverUnderTest } from './serverUnderTest.ts';
import { studioUnderTest } from './studioUnderTest.ts';

describe('suspects over HTTP', () => {
  it('are answered for a measured comparison, and say what could not be looked at', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('stone.png');
    await server.until(id, 'measured');
    const answer = await server.json<SuspectsAnswer>(`/api/comparisons/${id}/suspects`);
    suspectsAnswerSchema.parse(answer);
    expect(answer.suspects.map(({ suspect }) => suspect)).toContain('something-else');
    expect(answer.warnings.join()).toMatch(/evidence\.json/);
    expect((await server.call('/api/comparisons/nobody/suspects')).status).toBe(404);
    expect((await server.call(`/api/comparisons/${id}/suspects?run=nobody`)).status).toBe(404);
  });

  it('learn from the outcomes of tests and from what was found, which is counted for the room', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('stone.png');
    await server.until(id, 'measured');
    const door = `/api/comparisons/${id}/suspects/outcomes`;
    const tested = await server.call(door, postJson({ test: 'water-wipe', outcome: 'yes' }));
    expect(tested.status).toBe(201);
    const { tests, suspects } = (await tested.json()) as SuspectsAnswer;
    expect(tests.map(({ test }) => test)).not.toContain('water-wipe');
    expect(suspects.find(({ suspect }) => suspect === 'tint')!.weight).toBeGreaterThan(0);
    for (const [test, outcome] of [
      ['lukewarm-wash', 'no'],
      ['water-wipe', 'no'],
    ])
      await server.call(door, postJson({ test, outcome }));
    const { done } = await server.json<SuspectsAnswer>(`/api/comparisons/${id}/suspects`);
    expect(done.map(({ test, outcome }) => [test, outcome])).toEqual([
      ['water-wipe', 'no'],
      ['lukewarm-wash', 'no'],
    ]);
    for (const found of ['scum', 'tint'])
      expect((await server.call(door, postJson({ found }))).status).toBe(201);
    const after = await server.json<SuspectsAnswer>(`/api/comparisons/${id}/suspects`);
    expect(after.roomCases).toBe(1);
    expect(after.found).toBe('tint');
    expect((await server.call(door, postJson({ found: 'gremlins' }))).status).toBe(400);
  });
});

describe('comparisons to be judged beside another', () => {
  it('are the measured ones on the same photograph of the stone', async () => {
    const server = await serverUnderTest();
    const first = await server.comparison('stone.png');
    await server.until(first.id, 'measured');
    const second = await server.comparison('stone.png');
    await server.until(second.id, 'measured');
    const others = (id: string) =>
      server.json<{ comparisons: { id: string }[] }>(`/api/comparisons/${id}/of-its-stone`);
    expect((await others(first.id)).comparisons.map(({ id }) => id)).toEqual([second.id]);
    expect((await others(second.id)).comparisons.map(({ id }) => id)).toEqual([first.id]);
    expect((await server.call('/api/comparisons/nobody/of-its-stone')).status).toBe(404);
  });
});

describe("suspects of a work's newest pull over HTTP", () => {
  it('are answered before anything was measured, and learn from outcomes of tests', async () => {
    const studio = await studioUnderTest();
    const { id: stone } = await studio.stone('S-01');
    const { id } = await studio.work(stone, 'Low Water');
    const door = `/api/works/${id}/suspects`;
    expect((await studio.send('GET', door)).status).toBe(404);
    await studio.send('POST', `/api/works/${id}/pulls`, { number: 1, paper: { words: 'newsprint' } });
    const { body } = await studio.send<PullSuspects>('GET', door);
    pullSuspectsSchema.parse(body);
    expect(body).toMatchObject({ pull: { number: 1 }, before: null, run: null });
    expect(body.answer.warnings.join()).toMatch(/No pull of this work was measured/);
    const outcome = { test: 'water-wipe', outcome: 'yes' };
    const tested = await studio.send<PullSuspects>('POST', `${door}/outcomes`, outcome);
    expect(tested.status).toBe(201);
    const tint = tested.body.answer.suspects.find(({ suspect }) => suspect === 'tint')!;
    expect(tint.weight).toBeGreaterThan(0);
    expect(tested.body.answer.done).toMatchObject([outcome]);
    const righted = { ...outcome, outcome: 'no' };
    const { answer } = (await studio.send<PullSuspects>('POST', `${door}/outcomes`, righted)).body;
    expect(answer.done).toMatchObject([righted]);
    await studio.send('POST', `${door}/outcomes`, { found: 'tint' });
    expect((await studio.send<PullSuspects>('GET', door)).body.answer).toMatchObject({
      roomCases: 1,
      found: 'tint',
    });
    expect((await studio.send('POST', `${door}/outcomes`, { found: 'gremlins' })).status).toBe(400);
    expect((await studio.send('GET', '/api/works/nobody/suspects')).status).toBe(404);
  });
});
