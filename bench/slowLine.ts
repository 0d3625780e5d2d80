/**
 * One phone on a line that carries 1 kB a second each way, for real: how long the bench page, a tap and a piece of a
 * photograph take, whether anybody else is held up meanwhile, and what the server does with who is slower than it waits.
 * `npm run bench:slow` after `npm run build`; `-- --seconds 20` for less. Exit status 1 where something was lost.
 */
import { createHash, randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { connect } from 'node:net';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { quantile } from '../src/science/statistics/quantile.ts';
import { firstPieceBytes } from '../src/web/client/pieceSize.ts';
import { type Caller, createCaller } from './served/caller.ts';
import { openBenches, type WorkedAtBenches } from './served/manyBenches.ts';
import { type ServedProcess, serveSettled } from './served/servedProcess.ts';
import { openSlowLine } from './served/slowLine.ts';

const { values } = parseArgs({ options: { seconds: { type: 'string', default: '60' } } });
const bytesASecond = 1000;
const others = 5;
const events = 20_000;
const missed: string[] = [];

/** A phone that has the line to itself. */
async function phone(server: ServedProcess): Promise<{ caller: Caller; close(): Promise<void> }> {
  const line = await openSlowLine(server.address, bytesASecond);
  const caller = createCaller(line.address, null, new URL(server.address).host);
  return {
    caller,
    async close() {
      caller.close();
      await line.close();
    },
  };
}

const told = ({ taps }: WorkedAtBenches) =>
  `${others} others tap in ${quantile(taps, 0.5).toFixed(1)} ms, p99 ${quantile(taps, 0.99).toFixed(1)}`;
const seconds = (ms: number) => `${(ms / 1000).toFixed(1)} s`;
const expected = (what: string, status: number, wanted: number) => {
  if (status !== wanted) missed.push(`${what}: ${status}, wanted ${wanted}`);
};

/** The first page with all that it names, then what a bench asks for. */
async function page(server: ServedProcess, near: Caller, run: string): Promise<void> {
  const { caller, close } = await phone(server);
  const begun = performance.now();
  const first = await caller.ask('GET', `/bench/${run}`);
  const named = [
    ...(await near.ask('GET', `/bench/${run}`)).bytes
      .toString()
      .matchAll(/(?:src|href)="(\/assets\/[^"]+)"/g),
  ].map(([, path]) => path!);
  const parts = await Promise.all(named.map((path) => caller.ask('GET', path)));
  for (const part of [first, ...parts]) expected('a part of the page', part.status, 200);
  const bytes = [first, ...parts].reduce((sum, part) => sum + part.bytes.byteLength, 0);
  console.log(
    `page: ${(bytes / 1000).toFixed(0)} kB in ${parts.length + 1} files, ${seconds(performance.now() - begun)}`,
  );
  console.log(`its run: ${seconds((await caller.ask('GET', `/api/runs/${run}`)).ms)}`);
  await close();
}

async function taps(server: ServedProcess, run: string): Promise<void> {
  const { caller, close } = await phone(server);
  const took: number[] = [];
  for (let count = 0; count < 10; count++) {
    const at = new Date().toISOString();
    const body = { clientId: `slow ${count}`, kind: 'moved', at, sentAt: at, payload: { place: 'sky' } };
    const answer = await caller.ask('POST', `/api/runs/${run}/events`, body);
    expected('a tap', answer.status, 201);
    took.push(answer.ms);
  }
  console.log(
    `a tap, through and answered: ${seconds(quantile(took, 0.5))} at the middle, ${seconds(quantile(took, 1))} at most`,
  );
  await close();
}

async function piece(server: ServedProcess): Promise<void> {
  const { caller, close } = await phone(server);
  const bytes = randomBytes(firstPieceBytes);
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  const start = { fileName: 'slow.jpg', byteCount: 2 * bytes.byteLength, sha256 };
  const { id } = await caller.want<{ id: string }>('POST', '/api/uploads', start);
  const sent = await caller.ask('PATCH', `/api/uploads/${id}?from=0`, bytes);
  expected('a piece', sent.status, 200);
  const there = sent.status === 200 ? sent.json<{ receivedBytes: number }>().receivedBytes : 0;
  if (there !== bytes.byteLength) missed.push(`${there} of ${bytes.byteLength} bytes are there`);
  console.log(`a piece of ${firstPieceBytes / 1000} kB: ${seconds(sent.ms)}, ${there} bytes kept`);
  await close();
}

/** An answer of some megabytes, of which one kilobyte a second is taken. */
async function longAnswer(server: ServedProcess, run: string): Promise<void> {
  const { caller, close } = await phone(server);
  const before = await server.memory();
  const answer = caller.ask('GET', `/api/runs/${run}/events`).then(
    () => 'came whole',
    (error: Error) => error.message,
  );
  const how = await Promise.race([answer, sleep(Number(values.seconds) * 1000, 'still under way')]);
  const more = (await server.memory()) - before;
  console.log(
    `an answer of ${events} events: ${how} after ${values.seconds} s; memory ${(more / 2 ** 20).toFixed(0)} MiB more`,
  );
  if (how !== 'still under way') missed.push(`the long answer: ${how}`);
  await close();
}

/** Who sends a head of a request letter by letter, or nothing at all, is let go. */
async function slowHead(server: ServedProcess, words: string): Promise<void> {
  const { hostname, port } = new URL(server.address);
  const socket = connect(Number(port), hostname);
  socket.on('error', () => {});
  socket.resume();
  const begun = performance.now();
  const gone = new Promise<void>((resolve) => socket.once('close', () => resolve()));
  let at = 0;
  const timer = setInterval(() => words && socket.write(words[at++ % words.length]!), 1000);
  await Promise.race([gone, sleep(60_000)]);
  clearInterval(timer);
  if (!socket.destroyed) missed.push('a head that never ends is waited for');
  socket.destroy();
  console.log(
    `${words ? 'a head letter by letter' : 'silence'}: let go after ${seconds(performance.now() - begun)}`,
  );
}

const folder = await mkdtemp(join(tmpdir(), 'stonetone-slow-'));
const server = await serveSettled(join(folder, 'data'));
try {
  const benches = await openBenches(server.address, others);
  const near = createCaller(server.address);
  const { runs } = await near.want<{ runs: { id: string }[] }>('GET', '/api/works/saltreach-high-water/runs');
  const run =
    runs[0]?.id ??
    (await near.want<{ id: string }>('POST', '/api/runs', { workId: 'saltreach-high-water' })).id;
  const long = await near.want<{ id: string }>('POST', '/api/runs', { workId: 'saltreach-high-water' });
  const at = new Date().toISOString();
  for (let from = 0; from < events; from += 50) {
    const each = Array.from({ length: 50 }, (_, index) => ({
      clientId: `long ${from + index}`,
      kind: 'moved',
      at,
      sentAt: at,
      payload: { place: 'sky' },
    }));
    await Promise.all(each.map((event) => near.want('POST', `/api/runs/${long.id}/events`, event)));
  }
  await benches.work(3000);
  console.log(`alone: ${told(await benches.work(Number(values.seconds) * 1000))}`);
  const slow = Promise.all([
    page(server, near, run),
    taps(server, run),
    piece(server),
    longAnswer(server, long.id),
    slowHead(server, 'GET / HTTP/1.1'),
    slowHead(server, ''),
  ]);
  console.log(`beside all of that: ${told(await benches.work(Number(values.seconds) * 1000))}`);
  await slow;
  const kept = await near.want<{ events: { clientId: string }[] } | { clientId: string }[]>(
    'GET',
    `/api/runs/${run}/events`,
  );
  const ids = JSON.stringify(kept);
  for (let count = 0; count < 10; count++)
    if (!ids.includes(`"slow ${count}"`)) missed.push(`tap ${count} is not there`);
  benches.close();
  near.close();
  console.log(`load ${loadavg()[0]!.toFixed(1)}`);
  console.log(missed.length === 0 ? 'kept' : `MISSED\n${missed.join('\n')}`);
  process.exitCode = missed.length === 0 ? 0 : 1;
} finally {
  await server.stop();
  await rm(folder, { recursive: true, force: true });
}
