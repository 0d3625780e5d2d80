/**
 * How long a tap takes until it is on the disk, over HTTP on a real database file, and how long a work and its run take
 * to open where the log holds 100,000 events: in a hundred runs, and once more all in one. `npm run bench:log`
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
const runs = 100;
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

async function fill(folder: string, runIds: readonly string[]): Promise<void> {
  const opened = await openStore(folder);
  if (!opened.ok) throw new Error(opened.error.message);
  const each = logged / runIds.length;
  await opened.value.decide(async (records) => {
    for (const runId of runIds) {
      for (let index = 0; index < each; index++) await records.runs.addEvent(runId, eventAt(index));
    }
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

/** Starts the server afresh each time, so that nothing is held in memory, and opens the work and its run. */
async function open(runId: string, name: string): Promise<void> {
  const work: number[] = [];
  const cold: number[] = [];
  const warm: number[] = [];
  const rack: number[] = [];
  for (let count = 0; count < openings; count++) {
    const server = await serve(folder);
    await timed(server.address, '/api/stones');
    work.push((await timed(server.address, `/api/works/${workId}`)).ms);
    cold.push((await timed(server.address, `/api/runs/${runId}`)).ms);
    warm.push((await timed(server.address, `/api/runs/${runId}`)).ms);
    rack.push((await timed(server.address, '/api/rack')).ms);
    await server.stop();
  }
  tell(`${name}: the work`, work);
  tell(`${name}: the run, just started, before anything of it was kept`, cold.slice(0, 1));
  tell(`${name}: the run, just started`, cold.slice(1));
  tell(`${name}: the run again`, warm);
  tell(`${name}: the rack`, rack);
}

const folder = await mkdtemp(join(tmpdir(), 'stonetone-log-'));
try {
  const first = await serve(folder);
  await timed(first.address, `/api/works/${workId}/plans`, {});
  const begin = async () => (await timed(first.address, '/api/runs', { workId })).body as RunSummary;
  const tapped = await begin();
  const times: number[] = [];
  for (let count = 0; count < taps; count++) {
    const at = new Date().toISOString();
    const tap = { clientId: `tap ${count}`, kind: 'moved', at, payload: { place: 'clouds' } };
    times.push((await timed(first.address, `/api/runs/${tapped.id}/events`, tap)).ms);
  }
  tell('a tap, from request to answer, on the disk', times);
  const full = await begin();
  const many: string[] = [];
  for (let count = 0; count < runs; count++) many.push((await begin()).id);
  await first.stop();
  await fill(folder, many);
  await open(many.at(-1)!, `${logged} events in ${runs} runs`);
  await fill(folder, [full.id]);
  await open(full.id, `${logged} events in one run`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
