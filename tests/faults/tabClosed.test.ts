import { once } from 'node:events';
import { connect } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it } from 'vitest';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { postJson, serverUnderTest } from '../server/serverUnderTest.ts';

it('a tab that is closed while it logs leaves one event or none; sent again by the next, it is one', async () => {
  const server = await serverUnderTest({ studio: sampleStudio() });
  const { id } = await server.json<RunSummary>('/api/runs', postJson({ workId: 'saltreach-neap' }));
  const { host, port } = new URL(server.address);
  const path = `/api/runs/${id}/events`;
  const taps = Array.from({ length: 12 }, (_, count) => ({
    clientId: `tap ${count}`,
    kind: 'note',
    at: new Date().toISOString(),
  }));
  for (const [count, tap] of taps.entries()) {
    const body = JSON.stringify(tap);
    const head = `POST ${path} HTTP/1.1\r\nhost: ${host}\r\ncontent-type: application/json\r\ncontent-length: ${body.length}\r\n\r\n`;
    const socket = connect(Number(port), '127.0.0.1');
    socket.on('error', () => {});
    await once(socket, 'connect');
    // every third is cut off within the body
    socket.write(head + (count % 3 === 0 ? body.slice(0, -5) : body));
    await sleep(count);
    socket.destroy();
  }
  const early = await server.json<{ events: RunEvent[] }>(path);
  expect(new Set(early.events.map(({ clientId }) => clientId)).size).toBe(early.events.length);
  expect(early.events.some(({ clientId }) => clientId === 'tap 0')).toBe(false);
  for (const tap of taps) await server.json(path, postJson(tap));
  const { events } = await server.json<{ events: RunEvent[] }>(path);
  expect(events.map(({ clientId }) => clientId).toSorted()).toEqual(
    taps.map(({ clientId }) => clientId).toSorted(),
  );
  expect(events.map(({ sequence }) => sequence)).toEqual(taps.map((_, index) => index + 1));
});
