/**
 * A studio's days at sixty times their pace for an hour: taps, photographs, measuring, papers, backups, phones that join. Watches
 * memory, handles, files and the event loop, looks afterwards whether all that was acknowledged is there, and says what grew.
 * `npm run bench:soak` after `npm run build`; `-- --minutes 5` for less, `-- --in DIR` for another disk.
 */
import { mkdir, mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { quantile } from '../src/science/statistics/quantile.ts';
import { folderFaults } from '../tests/faults/requests/folderFaults.ts';
import { openFiles } from './served/processSample.ts';
import { serveBuilt } from './served/servedProcess.ts';
import { twelveMegapixels } from './served/twelveMegapixels.ts';
import { acknowledgedFaults } from './soak/acknowledgedFaults.ts';
import { doingsOf } from './soak/doings.ts';
import { openRoom } from './soak/room.ts';
import { type Sample, tellSample, tellVerdict } from './soak/verdict.ts';

const { values } = parseArgs({
  options: { minutes: { type: 'string', default: '60' }, in: { type: 'string', default: tmpdir() } },
});
const minutes = Number(values.minutes);
/** Minutes of the room's day told in one of the clock's. */
const pace = 60;
const sampleEveryMs = 10_000;
const tellEveryMs = Math.max(60_000, (minutes * 60_000) / 30);

const folder = await mkdtemp(join(values.in, 'stonetone-soak-'));
const dataFolder = join(folder, 'data');
await mkdir(join(folder, 'copies'));
const pictures = await twelveMegapixels();
const server = await serveBuilt(dataFolder, ['--lan', '--copies', join(folder, 'copies')]);
const room = await openRoom(server.address, pictures);
if (room.lan === null) console.log('no network on this machine: no phone joins');
const begun = performance.now();
const until = begun + minutes * 60_000;
const errors: string[] = [];
const done = new Map<string, number>();

async function repeat({ name, every, act }: ReturnType<typeof doingsOf>[number]): Promise<void> {
  const everyMs = (every / pace) * 60_000;
  await sleep(Math.random() * Math.min(everyMs, 20_000));
  while (performance.now() < until) {
    const next = performance.now() + everyMs * (0.7 + 0.6 * Math.random());
    try {
      await act();
      done.set(name, (done.get(name) ?? 0) + 1);
    } catch (error) {
      errors.push(`${name}: ${error instanceof Error ? error.message : error}`);
    }
    await sleep(Math.max(0, Math.min(next, until) - performance.now()));
  }
}

const sizeOf = async (name: string) => (await stat(join(dataFolder, name)).catch(() => null))?.size ?? 0;

/** A folder may go while it is read: then it is read again. */
async function filesThere(): Promise<number> {
  for (let tries = 1; ; tries++) {
    try {
      return (await readdir(dataFolder, { recursive: true })).length;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT' || tries === 20) throw error;
    }
  }
}

async function take(): Promise<Sample> {
  const memory = await server.memory();
  const inside = await server.sample(true);
  return {
    minutes: (performance.now() - begun) / 60_000,
    memory,
    inside,
    open: await openFiles(server.pid),
    logBytes: await sizeOf('stonetone.sqlite-wal'),
    databaseBytes: await sizeOf('stonetone.sqlite'),
    files: await filesThere(),
    errors: errors.length,
    taps: room.tapMs.length,
  };
}

const samples: Sample[] = [];
async function watch(): Promise<void> {
  let told = Number.NEGATIVE_INFINITY;
  while (performance.now() < until) {
    samples.push(await take());
    if (performance.now() - told >= tellEveryMs) {
      told = performance.now();
      console.log(tellSample(samples.at(-1)!));
    }
    await sleep(Math.min(sampleEveryMs, Math.max(0, until - performance.now())));
  }
}

try {
  console.log(tellSample(null));
  await Promise.all([watch(), ...doingsOf(room, pictures).map(repeat)]);
  samples.push(await take());
  console.log(tellSample(samples.at(-1)!));
  room.caller.close();
  const status = await server.stop();
  console.log([...done].map(([name, times]) => `${name} ${times}`).join(', '));
  const taps = [0.5, 0.99, 1].map((share) => quantile(room.tapMs, share).toFixed(1));
  console.log(
    `taps: ${room.tapMs.length}, median ${taps[0]}, p99 ${taps[1]}, most ${taps[2]} ms; load ${loadavg()[1]!.toFixed(1)}`,
  );
  const faults = [
    ...(status === 0 ? [] : [`it ended with ${status}: ${server.words().slice(-2000)}`]),
    ...errors,
    ...(await folderFaults(dataFolder)),
    ...acknowledgedFaults(dataFolder, room),
  ];
  const grew = tellVerdict(samples);
  console.log(
    faults.length === 0
      ? 'nothing failed; all that was acknowledged is there, in order'
      : faults.slice(0, 40).join('\n'),
  );
  process.exitCode = faults.length === 0 && !grew ? 0 : 1;
} finally {
  await server.kill().catch(() => {});
  await rm(folder, { recursive: true, force: true });
}
