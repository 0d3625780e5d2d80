import { once } from 'node:events';
import { Agent, request } from 'node:http';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';
import { expect, it, onTestFinished } from 'vitest';
import { openDoor } from '../../src/server/network/openDoor.ts';
import { aPicture, serverUnderTest } from './serverUnderTest.ts';
import { startOf } from './uploadPieces.ts';

/** A connection of its own, past any library that would hurry. */
async function line(address: string): Promise<Socket> {
  const { hostname, port } = new URL(address);
  const socket = connect({ host: hostname, port: Number(port) });
  onTestFinished(() => void socket.destroy());
  await new Promise((there) => socket.once('connect', there));
  return socket;
}

const pause = (ms: number) => new Promise((go) => setTimeout(go, ms));

it('a photograph that trickles in and an answer that is hardly read hold nobody up, and both come whole', async () => {
  const server = await serverUnderTest();
  const { host } = new URL(server.address);
  const bytes = await aPicture(77, 640, 480);
  const begun = await server.json<{ id: string }>('/api/uploads', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(startOf(bytes)),
  });

  const reader = await line(server.address);
  reader.pause();
  reader.write(`GET /api/openapi.json HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`);

  const sender = await line(server.address);
  let answer = '';
  sender.on('data', (part) => {
    answer += part.toString();
  });
  const answered = new Promise((done) => sender.once('close', done));
  sender.write(
    `PATCH /api/uploads/${begun.id}?from=0 HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n` +
      `Content-Type: application/octet-stream\r\nContent-Length: ${bytes.byteLength}\r\n\r\n`,
  );
  const step = Math.ceil(bytes.byteLength / 40);
  for (let from = 0; from < bytes.byteLength; from += step) {
    sender.write(bytes.subarray(from, from + step));
    const other = await server.call('/api/stones');
    expect([other.status, answer], 'others are answered while it is under way').toEqual([200, '']);
    await other.text();
    await pause(10);
    if (from + 2 * step >= bytes.byteLength) break;
  }
  sender.write(bytes.subarray(Math.floor((bytes.byteLength - 1) / step) * step));
  await answered;
  expect(answer).toMatch(/^HTTP\/1\.1 200 /);
  const kept = await server.call(`/api/uploads/${begun.id}/photograph`, { method: 'POST' });
  expect(kept.status).toBeLessThan(300);

  let read = '';
  const closed = new Promise((done) => reader.once('close', done));
  reader.on('data', (part) => {
    read += part.toString();
  });
  reader.resume();
  await closed;
  expect(read).toMatch(/^HTTP\/1\.1 200 /);
  expect(read.trimEnd().endsWith('}') || read.includes('\r\n0\r\n')).toBe(true);
});

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  await new Promise((closed) => server.close(closed));
  return port;
}

/** How long a connection is said to be kept for the next question, seconds. */
function keptSeconds(address: string): Promise<number> {
  const agent = new Agent({ keepAlive: true });
  onTestFinished(() => agent.destroy());
  return new Promise((resolve, reject) => {
    request(address, { agent }, (answer) => {
      answer.resume();
      resolve(Number(/timeout=(\d+)/.exec(String(answer.headers['keep-alive']))?.[1]));
    })
      .on('error', reject)
      .end();
  });
}

it('keeps a connection longer than browsers do, at both doors: a tap is never sent on one that goes', async () => {
  const browsersSeconds = 300;
  const server = await serverUnderTest();
  expect(await keptSeconds(`${server.address}/api/stones`)).toBeGreaterThan(browsersSeconds);
  const port = await freePort();
  const door = await openDoor({
    address: '127.0.0.1',
    port,
    answer: (_request, reply) => void reply.end('here'),
    certificate: null,
  });
  onTestFinished(() => door.close());
  expect(await keptSeconds(`http://127.0.0.1:${port}/`)).toBeGreaterThan(browsersSeconds);
});
