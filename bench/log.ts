/**
 * How long a tap takes until it is on the disk, over HTTP on a real database file, and how long a run with 100,000
 * events takes to open. `npm run bench:log`
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ok } from '../src/foundation/result.ts';
import type { RunEvent, RunSummary } from '../src/records/run.ts';
import { sampleStudio } from '../src/sample/saltreach/sampleStudio.ts';
import { quantile } from '../src/science/statistics/quantile.ts';
import { startServer } from '../src/server/startServer.ts';
import { openStore } from '../src/store/openStore.ts';

const taps = 1500;
const logged = 100_000;
const openings = 7;
const workId = 'saltreach-high-water';
const places = ['clouds', 'sea-wall', 'steps', 'gate'];

function eventAt(index: number): RunEvent {
  const at = new Date(Date.UTC(2026, 2, 4) + index * 1500).toISOString();
  const round = index % 40;
  const kind = index === 0 ? 'stage-started' : round < 4 ? 'laid' : round >= 36 ? 'lifted' : 'moved';
  return {
    sequence: index + 1,
    clientId: `tap ${index + 1}`,
    kind,
    at,
    sentAt: at,
    receivedAt: at,
    actor: 'P.R.',
    device: 'phone',
    payload: index === 0 ? { stage: 'first-etch' } : { place: places[index % 4] },
  } as RunEvent;
}

async function fill(folder: string, runId: string): Promise<void> {
  const opened = await openStore(folder);
  if (!opened.ok) throw new Error(opened.error.message);
  await opened.value.decide(async ({ runs }) => {
    for (let index = 0; index < logged; index++) await runs.addEvent(runId, eventAt(index));
    return ok(null);
  });
  await opened.value.close();
}

async function serve(folder: string) {
  const started = await startServer({ dataFolder: folder, port: 0, studio: sampleStudio() });
  if (!started.ok) throw new Error(started.error.message);
  return started.value;
}

async function timed(address: string, path: string, body?: object): Promise<{ ms: number; body: unknown }> {
  const begun = performance.now();
  const headers = { 'content-type': 'application/json' };
  const init = body && { method: 'POST', headers, body: JSON.stringify(body) };
  const response = await fetch(address + path, init);
  const answer: unknown = await response.json();
  if (!response.ok) throw new Error(`${response.status} ${path}`);
  return { ms: performance.now() - begun, body: answer };
}

function tell(name: string, times: readonly number[]): void {
  const at = (share: number) => quantile(times, share).toFixed(1);
  console.log(`${name}: median ${at(0.5)}, p99 ${at(0.99)}, most ${at(1)} ms (${times.length})`);
}

const folder = await mkdtemp(join(tmpdir(), 'stonetone-log-'));
try {
  const first = await serve(folder);
  await timed(first.address, `/api/works/${workId}/plans`, {});
  const begin = async () => (await timed(first.address, '/api/runs', { workId })).body as RunSummary;
  const [tapped, full] = [await begin(), await begin()];
  const times: number[] = [];
  for (let count = 0; count < taps; count++) {
    const at = new Date().toISOString();
    const tap = { clientId: `tap ${count}`, kind: 'moved', at, payload: { place: 'clouds' } };
    times.push((await timed(first.address, `/api/runs/${tapped.id}/events`, tap)).ms);
  }
  tell('a tap, from request to answer, on the disk', times);
  await first.stop();
  await fill(folder, full.id);
  const cold: number[] = [];
  const warm: number[] = [];
  const work: number[] = [];
  for (let count = 0; count < openings; count++) {
    const server = await serve(folder);
    await timed(server.address, '/api/stones');
    work.push((await timed(server.address, `/api/works/${workId}`)).ms);
    cold.push((await timed(server.address, `/api/runs/${full.id}`)).ms);
    for (let again = 0; again < 3; again++)
      warm.push((await timed(server.address, `/api/runs/${full.id}`)).ms);
    if (count === 0)
      tell('all of its events', [(await timed(server.address, `/api/runs/${full.id}/events`)).ms]);
    await server.stop();
  }
  tell(`opening the work of a run with ${logged} events`, work);
  tell('opening that run, just started', cold);
  tell('opening it again', warm);
} finally {
  await rm(folder, { recursive: true, force: true });
}
