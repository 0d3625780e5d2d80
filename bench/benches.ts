/**
 * Fifty benches at once, alone, beside measurements of 12 megapixels, and beside those with clients that send and read at a
 * trickle or say nothing: how long a tap takes to the disk, how much memory the program holds. `npm run bench:benches` after
 * `npm run build`; `-- --benches 10 --seconds 10` for less. Exit status 1 where a limit is passed or anything refused.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { quantile } from '../src/science/statistics/quantile.ts';
import { folderFaults } from '../tests/faults/requests/folderFaults.ts';
import { type Caller, createCaller } from './served/caller.ts';
import { openBenches, type WorkedAtBenches } from './served/manyBenches.ts';
import { serveBuilt } from './served/servedProcess.ts';
import { openSlowClients } from './served/slowClients.ts';
import { type TwelveMegapixels, twelveMegapixels } from './served/twelveMegapixels.ts';

const { values } = parseArgs({
  options: { benches: { type: 'string', default: '50' }, seconds: { type: 'string', default: '30' } },
});
const seconds = Number(values.seconds);
/** A tap to the disk, p99, and the whole process tree at its most. */
const limits = { tapMs: 100, memoryBytes: 1.5 * 2 ** 30 };
const silent = 200;
const slowOfEach = 10;
/** Who says nothing is let go within this, ms. */
const longestSilenceMs = 60_000;

const folder = await mkdtemp(join(tmpdir(), 'stonetone-benches-'));
const dataFolder = join(folder, 'data');
const pictures = await twelveMegapixels();
const server = await serveBuilt(dataFolder);
const caller = createCaller(server.address);
let measuring = true;
let measured = 0;
let mostMemory = 0;
const missed: string[] = [];

/** One comparison after the other, each of other photographs, so that something is measured all the time. */
async function measureOn(
  by: Caller,
  { sizeMm, zones, corners, stone, print }: TwelveMegapixels,
): Promise<void> {
  const id = async (name: string, bytes: Uint8Array) =>
    (await by.upload(name, bytes)).json<{ id: string }>().id;
  while (measuring) {
    const request = {
      title: `beside ${measured}`,
      sizeMm,
      zones,
      stone: { photograph: await id('stone.jpg', stone(measured)), corners: corners.stone },
      proof: { photograph: await id('print.jpg', print(measured)), corners: corners.print },
    };
    const made = await by.want<{ id: string }>('POST', '/api/comparisons', request);
    for (;;) {
      const { state } = await by.want<{ state: string }>('GET', `/api/comparisons/${made.id}`);
      if (state === 'measured') break;
      if (state !== 'waiting' && state !== 'measuring') throw new Error(`a comparison is ${state}`);
      if (!measuring) return;
      await sleep(200);
    }
    measured += 1;
  }
}

const told = (times: readonly number[]) =>
  [0.5, 0.99, 1].map((share) => quantile(times, share).toFixed(1)).join(' / ');

let used = { processorMs: 0, at: 0 };

async function tell(name: string, { taps, reads, faults }: WorkedAtBenches): Promise<void> {
  const { loop, handles, processorMs } = await server.sample(false);
  const share = (processorMs - used.processorMs) / (performance.now() - used.at);
  used = { processorMs, at: performance.now() };
  console.log(`${name}: ${taps.length} taps, median / p99 / most ${told(taps)} ms`);
  for (const [what, times] of reads) console.log(`    ${what}: ${told(times)} ms (${times.length})`);
  console.log(
    `    event loop late by ${loop.p99.toFixed(1)} ms (p99), ${loop.most.toFixed(0)} at most; ${handles} handles; ${(100 * share).toFixed(0)} % of a core`,
  );
  const p99 = quantile(taps, 0.99);
  if (p99 > limits.tapMs) missed.push(`${name}: p99 of a tap ${p99.toFixed(0)} ms, wanted ${limits.tapMs}`);
  missed.push(...faults.slice(0, 5));
}

try {
  const benches = await openBenches(server.address, Number(values.benches));
  const watch = setInterval(async () => {
    mostMemory = Math.max(mostMemory, await server.memory());
  }, 250);
  await benches.work(3000);
  used = { processorMs: (await server.sample(false)).processorMs, at: performance.now() };
  await tell(`${values.benches} benches`, await benches.work(seconds * 1000));
  const measurements = measureOn(caller, pictures);
  await sleep(1000);
  await tell('and a measurement at a time', await benches.work(seconds * 1000));
  const slowSince = performance.now();
  const slow = openSlowClients(server.address, { silent, each: slowOfEach, path: '/api/export.zip' });
  await tell(
    `and ${silent} silent, ${slowOfEach} sending, ${slowOfEach} reading slowly`,
    await benches.work(seconds * 1000),
  );
  measuring = false;
  await measurements;
  while (slow.open().silent > 0 && performance.now() - slowSince < longestSilenceMs) await sleep(250);
  const left = slow.open();
  const after = ((performance.now() - slowSince) / 1000).toFixed(0);
  console.log(
    `still open after ${after} s: ${left.silent} silent, ${left.sending} sending, ${left.reading} reading`,
  );
  if (left.silent > 0) missed.push(`${left.silent} connections that said nothing are still held`);
  slow.close();
  clearInterval(watch);
  benches.close();
  caller.close();
  const megabytes = mostMemory / 2 ** 20;
  console.log(
    `${measured} comparisons measured meanwhile; ${megabytes.toFixed(0)} MiB at most; load ${loadavg()[0]!.toFixed(1)}`,
  );
  if (mostMemory > limits.memoryBytes) missed.push(`${megabytes.toFixed(0)} MiB, wanted under 1536`);
  const status = await server.stop();
  if (status !== 0) missed.push(`it ended with ${status}: ${server.words()}`);
  missed.push(...(await folderFaults(dataFolder)));
  console.log(missed.length === 0 ? 'kept' : `MISSED\n${missed.join('\n')}`);
  process.exitCode = missed.length === 0 ? 0 : 1;
} finally {
  await server.kill().catch(() => {});
  await rm(folder, { recursive: true, force: true });
}
