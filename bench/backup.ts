/**
 * A backup of five gigabytes of photographs beside a plain copy of the same files on the same disk: how long saving,
 * verifying and restoring take, each in a process of its own, and the most memory it held. `npm run bench:backup`;
 * `-- --gigabytes 1` for less, `-- --in DIR` for another disk. Exit status 1 where one held 200 MB or more.
 */
import { spawnSync } from 'node:child_process';
import { createHash, randomFillSync } from 'node:crypto';
import { mkdir, mkdtemp, readdir, rm, stat, writeFile } from 'node:fs/promises';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { makeBackup } from '../src/application/backup/makeBackup.ts';
import { restoreBackup } from '../src/application/backup/restoreBackup.ts';
import { verifyBackup } from '../src/application/backup/verifyBackup.ts';
import { openStore } from '../src/store/openStore.ts';

const { values } = parseArgs({
  options: {
    gigabytes: { type: 'string', default: '5' },
    in: { type: 'string', default: tmpdir() },
    act: { type: 'string' },
    data: { type: 'string', default: '' },
    file: { type: 'string', default: '' },
  },
});
/** What each may hold at most, MB. */
const mostMb = 200;
/** Photographs of phones and cameras, bytes. */
const smallest = 3e6;
const largest = 14e6;

/** One step, in a process of its own; prints what it took. */
async function actAlone(act: string): Promise<void> {
  const begun = performance.now();
  const done =
    act === 'save'
      ? await makeBackup({ dataFolder: values.data, to: values.file, now: () => new Date() })
      : act === 'verify'
        ? await verifyBackup(values.file)
        : await restoreBackup(values.file, values.data);
  if (!done.ok) throw new Error(`${done.error.message} ${done.error.remedy}`);
  const seconds = (performance.now() - begun) / 1000;
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  console.log(
    JSON.stringify({ seconds, peakMb: maxRSS / 1000, cpuSeconds: (userCPUTime + systemCPUTime) / 1e6 }),
  );
}

/** What a step took; of processors, all cores together. */
interface Took {
  readonly seconds: number;
  readonly peakMb: number;
  readonly cpuSeconds: number;
}

function alone(act: string, data: string, file: string): Took {
  const words = ['--import', 'tsx', fileURLToPath(import.meta.url), '--act', act, '--data', data];
  const ran = spawnSync(process.execPath, [...words, '--file', file], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(ran.stderr);
  return JSON.parse(ran.stdout) as Took;
}

/** Copies files and waits until they are on the disk, as a backup does. */
function plainCopy(from: string, to: string): number {
  const begun = performance.now();
  const ran = spawnSync('sh', ['-c', 'cp -r "$0" "$1" && sync -f "$1"', from, to], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(ran.stderr);
  return (performance.now() - begun) / 1000;
}

/** Files that nothing can pack, under their own hashes, as photographs are kept. */
async function fillWithPhotographs(folder: string, bytes: number): Promise<number> {
  let left = bytes;
  let files = 0;
  while (left > 0) {
    const size = Math.min(left, Math.round(smallest + Math.random() * (largest - smallest)));
    const content = randomFillSync(Buffer.allocUnsafe(size));
    const id = createHash('sha256').update(content).digest('hex');
    const place = join(folder, id.slice(0, 2));
    await mkdir(place, { recursive: true });
    await writeFile(join(place, `${id}.jpeg`), content);
    left -= size;
    files += 1;
  }
  return files;
}

async function bench(): Promise<void> {
  const folder = await mkdtemp(join(values.in, 'stonetone-backup-'));
  try {
    const data = join(folder, 'data');
    const opened = await openStore(data);
    if (!opened.ok) throw new Error(opened.error.message);
    await opened.value.close();
    const bytes = Number(values.gigabytes) * 1e9;
    const files = await fillWithPhotographs(join(data, 'photographs'), bytes);
    spawnSync('sync', ['-f', folder]);
    const loads = loadavg()
      .map((load) => load.toFixed(1))
      .join(', ');
    console.log(
      `${files} photographs, ${(bytes / 1e9).toFixed(1)} GB; ${availableParallelism()} cores, load ${loads}`,
    );
    const told = (what: string, seconds: number, more = '') =>
      console.log(
        `  ${what.padEnd(28)} ${seconds.toFixed(1)} s, ${(bytes / 1e6 / seconds).toFixed(0)} MB/s${more}`,
      );
    const copy = join(folder, 'copy');
    told('a plain copy, before', plainCopy(join(data, 'photographs'), copy));
    await rm(copy, { recursive: true });
    const file = join(folder, 'saved.tar');
    const again = join(folder, 'again');
    let most = 0;
    for (const [act, where] of [
      ['save', data],
      ['verify', ''],
      ['restore', again],
    ] as const) {
      const { seconds, peakMb, cpuSeconds } = alone(act, where, file);
      most = Math.max(most, peakMb);
      told(
        act,
        seconds,
        `, ${cpuSeconds.toFixed(1)} s of it at work; ${peakMb.toFixed(0)} MB of memory at most`,
      );
    }
    const restored = (await readdir(join(again, 'photographs'), { recursive: true })).filter((name) =>
      name.endsWith('.jpeg'),
    );
    if (restored.length !== files) throw new Error(`${restored.length} photographs came back of ${files}`);
    await rm(again, { recursive: true });
    told('a plain copy, after', plainCopy(join(data, 'photographs'), copy));
    console.log(`  the backup takes ${((await stat(file)).size / 1e9).toFixed(2)} GB`);
    if (most >= mostMb) {
      console.log(`${most.toFixed(0)} MB is ${mostMb} MB or more`);
      process.exitCode = 1;
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

await (values.act === undefined ? bench() : actAlone(values.act));
