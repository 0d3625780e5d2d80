import { describe, expect, it } from 'vitest';
import { suspectsAnswerSchema } from '../../src/contract/suspects.ts';
import type { SuspectsAnswer } from '../../src/records/suspects.ts';
import { postJson, serverUnderTest } from './serverUnderTest.ts';

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
    for (const found of ['scum', 'tint'])
      expect((await server.call(door, postJson({ found }))).status).toBe(201);
    expect((await server.json<SuspectsAnswer>(`/api/comparisons/${id}/suspects`)).roomCases).toBe(1);
    expect((await server.call(door, postJson({ found: 'gremlins' }))).status).toBe(400);
  });
});
