import { expect, it } from 'vitest';
import type { RunState } from '../../src/records/bench.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { folderUnderTest, postJson, serverUnderTest } from '../server/serverUnderTest.ts';

const hour = 3_600_000;

it('two people log one etch on clocks that are hours wrong, one out of reach, a restart in between: one etch', async () => {
  const dataFolder = await folderUnderTest();
  const first = await serverUnderTest({ dataFolder, studio: sampleStudio() });
  const { id } = await first.json<RunSummary>('/api/runs', postJson({ workId: 'saltreach-high-water' }));
  const began = Date.now() - 200_000;
  /** What a device with a wrong clock says of an event so many seconds into the etch. */
  const said = (device: string, aheadMs: number, kind: string, seconds: number) => ({
    clientId: `${device} ${kind}`,
    device,
    actor: device === 'phone' ? 'P.R.' : 'J.O.',
    kind,
    payload: { place: 'clouds' },
    at: new Date(began + seconds * 1000 + aheadMs).toISOString(),
    sentAt: new Date(Date.now() + aheadMs).toISOString(),
  });
  const log = (server: typeof first, body: object) =>
    server.json<RunEvent>(`/api/runs/${id}/events`, postJson(body));
  await log(first, said('phone', 3 * hour, 'laid', 0));
  await first.stop();
  const second = await serverUnderTest({ dataFolder });
  const lifted = said('phone', 3 * hour, 'lifted', 120);
  const answers = await Promise.all(Array.from({ length: 10 }, () => log(second, lifted)));
  expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
  // the other one was out of reach all the while, and sends last what was tapped at the same time
  await log(second, said('tablet', -5 * hour, 'laid', 1));
  await log(second, said('tablet', -5 * hour, 'lifted', 121));
  const state = await second.json<RunState>(`/api/runs/${id}`);
  expect(state.events).toBe(4);
  expect(state.contacts.length).toBe(1);
  const { spent, laidAt } = state.contacts[0]!;
  expect(spent).toMatchObject({ how: 'measured', oneClock: true });
  expect(spent!.seconds).toBeCloseTo(120, 1);
  expect(Math.abs(Date.parse(laidAt) - began)).toBeLessThan(10_000);
  expect(state.facts.map(({ fact }) => fact).toSorted()).toEqual([
    'clock-wrong',
    'clock-wrong',
    'logged-twice',
    'logged-twice',
    'sent-late',
    'sent-late',
  ]);
});
