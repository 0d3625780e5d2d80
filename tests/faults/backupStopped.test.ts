import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chmod, mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { expect, it, onTestFinished, vi } from 'vitest';
import { makeBackup } from '../../src/application/backup/makeBackup.ts';
import { restoreBackup } from '../../src/application/backup/restoreBackup.ts';
import { verifyBackup } from '../../src/application/backup/verifyBackup.ts';
import { folderUnderTest } from '../server/serverUnderTest.ts';
import { filesBelow, savedFolder } from './savedFolder.ts';

vi.setConfig({ testTimeout: 120_000 });

const bin = fileURLToPath(new URL('../../bin/stonetone.js', import.meta.url));
const now = () => new Date();
/** A user of no rights, for checks that run as one who may do anything. */
const nobody = 65_534;

interface Limits {
  /** No file may grow beyond this, in blocks of 1,024 bytes: a disk that is full, for one process alone. */
  readonly mostBlocks?: number;
  readonly withoutRights?: boolean;
}

function started(words: readonly string[], { mostBlocks, withoutRights = false }: Limits = {}) {
  const limit = mostBlocks === undefined ? '' : `ulimit -f ${mostBlocks}; `;
  const child = spawn('bash', ['-c', `${limit}exec "$0" "$@"`, process.execPath, bin, ...words], {
    stdio: ['ignore', 'ignore', 'pipe'],
    ...(withoutRights && process.getuid?.() === 0 ? { uid: nobody } : {}),
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  let complained = '';
  child.stderr.on('data', (chunk: Buffer) => {
    complained += chunk.toString();
  });
  const ended = new Promise<{ status: number | null; complained: string }>((done) => {
    child.on('close', (status) => done({ status, complained }));
  });
  return { child, ended };
}

async function savedBackup() {
  const dataFolder = await folderUnderTest();
  const place = await folderUnderTest();
  await savedFolder(dataFolder);
  const saved = join(place, 'saved.tar');
  expect(await makeBackup({ dataFolder, to: saved, now })).toMatchObject({ ok: true });
  return { dataFolder, place, saved };
}

it('a full disk is told, and nothing half-made stays on it', async () => {
  const { dataFolder, place, saved } = await savedBackup();
  const words = ['backup', '--data', dataFolder, '--to', join(place, 'more.tar')];
  const backup = await started(words, { mostBlocks: 700 }).ended;
  expect(backup).toEqual({ status: 2, complained: expect.stringMatching(/^disk-full: .*Free space/) });
  const restore = await started(['restore', saved, '--data', join(place, 'again')], { mostBlocks: 400 })
    .ended;
  expect(restore).toEqual({ status: 2, complained: expect.stringMatching(/^disk-full: /) });
  expect(await readdir(place)).toEqual(['saved.tar']);
});

it('a folder that can only be read is told by its name', async () => {
  const { dataFolder, place, saved } = await savedBackup();
  const fixed = join(place, 'fixed');
  await mkdir(fixed);
  await chmod(fixed, 0o555);
  for (const folder of [place, dataFolder]) await chmod(folder, 0o755);
  const told = { status: 2, complained: expect.stringMatching(/^output-unwritable: .*fixed.* not allowed/) };
  const to = join(fixed, 'more.tar');
  expect(await started(['backup', '--data', dataFolder, '--to', to], { withoutRights: true }).ended).toEqual(
    told,
  );
  const again = join(fixed, 'again');
  expect(await started(['restore', saved, '--data', again], { withoutRights: true }).ended).toEqual(told);
  expect(await readdir(fixed)).toEqual([]);
});

it('a data folder that can only be read is saved, as one on a failing disk', async () => {
  const { dataFolder, place } = await savedBackup();
  for (const name of ['stonetone.sqlite-wal', 'stonetone.sqlite-shm'])
    await rm(join(dataFolder, name), { force: true });
  await chmod(join(dataFolder, 'stonetone.sqlite'), 0o444);
  await chmod(dataFolder, 0o555);
  await chmod(place, 0o777);
  const to = join(place, 'rescued.tar');
  const words = ['backup', '--data', dataFolder, '--to', to];
  expect(await started(words, { withoutRights: true }).ended).toEqual({ status: 0, complained: '' });
  expect(await restoreBackup(to, join(place, 'again'))).toMatchObject({ ok: true });
  const [before, after] = [await filesBelow(dataFolder), await filesBelow(join(place, 'again'))];
  for (const [name, bytes] of after) expect(bytes.length, name).toBe(before.get(name)!.length);
  expect((await readdir(place)).toSorted()).toEqual(['again', 'rescued.tar', 'saved.tar']);
  await chmod(dataFolder, 0o755);
});

it('killed on the way there is a whole backup, a whole folder, or none, and the next one is made', async () => {
  const { dataFolder, place, saved } = await savedBackup();
  const wanted = [...(await filesBelow(dataFolder)).keys()].filter((name) => name.includes('/'));
  for (let life = 0; life < 5; life++) {
    const to = join(place, `killed ${life}.tar`);
    const folder = join(place, `killed ${life}`);
    for (const words of [
      ['backup', '--data', dataFolder, '--to', to],
      ['restore', saved, '--data', folder],
    ]) {
      const { child, ended } = started(words);
      const names = async () =>
        (await readdir(place)).filter((name) => name.includes(`killed ${life}`)).length;
      const there = await names();
      while ((await names()) === there && child.exitCode === null) await sleep(1);
      await sleep(3 * life);
      child.kill('SIGKILL');
      await ended;
    }
    if (existsSync(to)) expect(await verifyBackup(to)).toMatchObject({ ok: true });
    else expect(await makeBackup({ dataFolder, to, now })).toMatchObject({ ok: true });
    if (!existsSync(folder)) expect(await restoreBackup(saved, folder)).toMatchObject({ ok: true });
    const names = [...(await filesBelow(folder)).keys()].filter((name) => name.includes('/'));
    expect(names).toEqual(wanted);
  }
  expect((await readdir(place)).filter((name) => name.startsWith('.'))).toEqual([]);
});
