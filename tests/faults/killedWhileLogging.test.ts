import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it, vi } from 'vitest';
import { seededRandom } from '../../src/foundation/random.ts';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { folderUnderTest, postJson, serverUnderTest } from '../server/serverUnderTest.ts';
import { killLogging } from './killedLogging.ts';
import { killServer, serveInProcess } from './serverProcess.ts';

vi.setConfig({ testTimeout: 300_000 });

it('killed ten times while it logs, every acknowledged event is there, once and in order', async () => {
  const seed = 20261126;
  const outcome = await killLogging(await folderUnderTest(), 10, seededRandom(seed));
  expect(outcome.faults, `seed ${seed}`).toEqual([]);
  expect(outcome.acknowledged).toBeGreaterThan(0);
});

it('killed while two people log over HTTP, every acknowledged event is there, and going on doubles none', async () => {
  const dataFolder = await folderUnderTest();
  await (await serverUnderTest({ dataFolder, studio: sampleStudio() })).stop();
  const workId = 'saltreach-low-water';
  const acknowledged = new Map<string, number>();
  const unheard: string[] = [];
  const note = (clientId: string) =>
    postJson({ clientId, kind: 'note', at: new Date().toISOString(), device: clientId.slice(0, 4) });
  const { server, address } = await serveInProcess(dataFolder);
  const begun = await fetch(`${address}/api/runs`, postJson({ workId }));
  const { id } = (await begun.json()) as RunSummary;
  const people = ['P.R.', 'J.O.'].map(async (person) => {
    for (let count = 1; ; count++) {
      const clientId = `${person} ${count}`;
      unheard.push(clientId);
      const response = await fetch(`${address}/api/runs/${id}/events`, note(clientId)).catch(() => null);
      if (response?.status !== 201) return;
      const kept = (await response.json().catch(() => null)) as RunEvent | null;
      if (kept === null) return;
      acknowledged.set(clientId, kept.sequence);
      unheard.splice(unheard.indexOf(clientId), 1);
    }
  });
  while (acknowledged.size < 60) await sleep(10);
  await killServer(server);
  await Promise.all(people);
  const next = await serverUnderTest({ dataFolder });
  const read = async () => (await next.json<{ events: RunEvent[] }>(`/api/runs/${id}/events`)).events;
  const kept = new Map((await read()).map((event) => [event.clientId, event.sequence]));
  for (const [clientId, sequence] of acknowledged) expect(kept.get(clientId)).toBe(sequence);
  for (const clientId of unheard) {
    const again = await next.call(`/api/runs/${id}/events`, note(clientId));
    expect(again.status).toBe(201);
  }
  const all = await read();
  expect(all.length).toBe(acknowledged.size + unheard.length);
  expect(all.map(({ sequence }) => sequence)).toEqual(all.map((_, index) => index + 1));
});
