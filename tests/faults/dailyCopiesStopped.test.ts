import { spawn } from 'node:child_process';
import { chmod, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { expect, it, onTestFinished, vi } from 'vitest';
import { verifyBackup } from '../../src/application/backup/verifyBackup.ts';
import { judgeCopiesFolder } from '../../src/application/copies/copiesFolder.ts';
import { makeCopy } from '../../src/application/copies/makeCopy.ts';
import type { CopiesState } from '../../src/records/copies.ts';
import { folderUnderTest } from '../server/serverUnderTest.ts';
import { savedFolder } from './savedFolder.ts';

vi.setConfig({ testTimeout: 120_000 });

const copyDay = fileURLToPath(new URL('./copyDay.ts', import.meta.url));
/** A user of no rights, for checks that run as one who may do anything. */
const nobody = 65_534;
const morningOf = (day: number) => new Date(2026, 10, day, 3).toISOString();
const nameOf = (day: number) => `stonetone-2026-11-${day}.tar`;

interface Limits {
  /** No file may grow beyond this, in blocks of 1,024 bytes: a disk that is full, for one process alone. */
  readonly mostBlocks?: number;
  readonly withoutRights?: boolean;
  readonly anew?: boolean;
}

/** A data folder with a good copy of 26 November, and a way to make those of other days. */
async function copied() {
  const dataFolder = await folderUnderTest();
  await savedFolder(dataFolder);
  const folder = await folderUnderTest();
  const first = { dataFolder, folder, at: morningOf(26), anew: false };
  expect(await makeCopy(first)).toMatchObject({ ok: true });
  const started = (day: number, { mostBlocks, withoutRights = false, anew = false }: Limits = {}) => {
    const limit = mostBlocks === undefined ? '' : `ulimit -f ${mostBlocks}; `;
    const words = ['--import', 'tsx', copyDay, dataFolder, folder, morningOf(day), ...(anew ? ['anew'] : [])];
    const child = spawn('bash', ['-c', `${limit}exec "$0" "$@"`, process.execPath, ...words], {
      stdio: ['ignore', 'pipe', 'pipe'],
      ...(withoutRights && process.getuid?.() === 0 ? { uid: nobody } : {}),
    });
    onTestFinished(() => void child.kill('SIGKILL'));
    let [told, complained] = ['', ''];
    child.stdout.on('data', (chunk: Buffer) => {
      told += chunk;
    });
    child.stderr.on('data', (chunk: Buffer) => {
      complained += chunk;
    });
    const ended = new Promise<{ state: CopiesState | null; complained: string }>((done) => {
      child.on('close', () => done({ state: told === '' ? null : JSON.parse(told), complained }));
    });
    return { child, ended };
  };
  return { dataFolder, folder, started };
}

it('a full disk is told with the last good copy, nothing older goes, and the next day heals it', async () => {
  const { folder, started } = await copied();
  const good = join(folder, nameOf(26));
  const before = await readFile(good);
  for (const limits of [{ mostBlocks: 700 }, { mostBlocks: 700, anew: true }]) {
    const { state, complained } = await started(27, limits).ended;
    expect(state, complained).toMatchObject({
      notMade: { failure: { code: 'disk-full' } },
      lastGood: { file: good },
    });
    expect(complained).toMatch(/^The daily copy failed: The disk of .* takes nothing more/);
    expect(await readdir(folder)).toEqual([nameOf(26)]);
  }
  // today's own is not lost either where a new one is asked for
  const { state } = await started(26, { mostBlocks: 700, anew: true }).ended;
  expect(state).toMatchObject({ notMade: { failure: { code: 'disk-full' } }, lastGood: { file: good } });
  expect((await readFile(good)).equals(before)).toBe(true);
  const healed = await started(27).ended;
  expect(healed.state).toMatchObject({ notMade: null, lastGood: { file: join(folder, nameOf(27)) } });
  expect((await readdir(folder)).sort()).toEqual([nameOf(26), nameOf(27)]);
});

it('a folder that can only be read is told, and is not chosen', async () => {
  const { dataFolder, folder, started } = await copied();
  await chmod(dataFolder, 0o777);
  await chmod(folder, 0o555);
  const { state, complained } = await started(27, { withoutRights: true }).ended;
  const good = join(folder, nameOf(26));
  expect(state, complained).toMatchObject({
    notMade: { failure: { code: 'output-unwritable', message: expect.stringContaining('not allowed') } },
    lastGood: { file: good },
  });
  expect(await readdir(folder)).toEqual([nameOf(26)]);
  await chmod(folder, 0o755);
});

it('what can take no copies is not chosen: a file, what is not there, half a path, the data folder itself', async () => {
  const { dataFolder, folder } = await copied();
  const inside = join(dataFolder, 'photographs');
  await writeFile(join(folder, 'file'), '');
  for (const [place, why] of [
    [join(folder, 'file'), 'not a folder'],
    [join(folder, 'gone'), 'not there'],
    ['copies', 'no whole path'],
    [inside, 'inside the data folder'],
    [dataFolder, 'inside the data folder'],
  ] as const) {
    expect(await judgeCopiesFolder(dataFolder, place)).toMatchObject({
      ok: false,
      error: { code: 'output-unwritable', message: expect.stringContaining(why), path: 'folder' },
    });
  }
  expect(await judgeCopiesFolder(dataFolder, folder)).toEqual({ ok: true, value: folder });
  expect((await readdir(folder)).sort()).toEqual(['file', nameOf(26)]);
});

it('a database that was damaged meanwhile is told with the last good copy, and not copied', async () => {
  const { dataFolder, folder, started } = await copied();
  const database = join(dataFolder, 'stonetone.sqlite');
  const bytes = await readFile(database);
  bytes.fill(0x55, 4096, 12_288);
  await writeFile(database, bytes);
  const { state, complained } = await started(27).ended;
  expect(state, complained).toMatchObject({
    notMade: { failure: { code: 'database-damaged', message: expect.stringContaining(database) } },
    lastGood: { file: join(folder, nameOf(26)), madeAt: morningOf(26) },
  });
  expect(await readdir(folder)).toEqual([nameOf(26)]);
});

it('killed on the way, the copies that were there are whole, and the next one is made', async () => {
  const { folder, started } = await copied();
  for (let life = 0; life < 4; life++) {
    const { child, ended } = started(26 + (life % 2), { anew: true });
    while (child.exitCode === null && !(await readdir(folder)).some((name) => name.startsWith('.')))
      await sleep(1);
    await sleep(4 * life);
    child.kill('SIGKILL');
    await ended;
    for (const name of (await readdir(folder)).filter((one) => !one.startsWith('.')))
      expect(await verifyBackup(join(folder, name)), name).toMatchObject({ ok: true });
  }
  await mkdir(folder, { recursive: true });
  const { state, complained } = await started(28).ended;
  expect(state, complained).toMatchObject({ notMade: null, lastGood: { file: join(folder, nameOf(28)) } });
});
