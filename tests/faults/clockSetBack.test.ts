import { expect, it } from 'vitest';
import type { RunState } from '../../src/records/bench.ts';
import type { Rack } from '../../src/records/rack.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { postJson, serverUnderTest } from '../server/serverUnderTest.ts';

const hour = 3_600_000;

it('a clock that is set back while etch lies on the stone: no time runs backwards, and the log says so', async () => {
  const server = await serverUnderTest({ studio: sampleStudio() });
  const { id } = await server.json<RunSummary>('/api/runs', postJson({ workId: 'saltreach-high-water' }));
  const log = (clientId: string, kind: string, aheadMs: number) => {
    const at = new Date(Date.now() + aheadMs).toISOString();
    const payload = { place: 'clouds' };
    const body = { clientId, kind, payload, device: 'phone', at, sentAt: at };
    return server.json<RunEvent>(`/api/runs/${id}/events`, postJson(body));
  };
  await log('a', 'laid', 0);
  await log('b', 'moved', 0);
  await log('c', 'moved', -2 * hour);
  await log('d', 'lifted', -2 * hour);
  const state = await server.json<RunState>(`/api/runs/${id}`);
  expect(state.events).toBe(4);
  expect(state.facts.map(({ fact }) => fact)).toContain('clock-set');
  const [contact] = state.contacts;
  expect(contact!.spent!.seconds).toBeGreaterThanOrEqual(0);
  expect(contact!.spent!.seconds).toBeLessThan(60);
  expect(contact!.spent!.oneClock).toBe(false);
  expect(Date.parse(contact!.liftedAt!)).toBeGreaterThanOrEqual(Date.parse(contact!.laidAt));
  // what the rack says of it is as old as it is, not two hours older
  const { lines } = await server.json<Rack>('/api/rack');
  const { since } = lines.find(({ runId }) => runId === id)!.standing;
  expect(Math.abs(Date.now() - Date.parse(since!))).toBeLessThan(60_000);
});
