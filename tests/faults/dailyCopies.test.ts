import { mkdir, readdir, readFile, rm, stat, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it, onTestFinished, vi } from 'vitest';
import { restoreBackup } from '../../src/application/backup/restoreBackup.ts';
import { rememberedCopies } from '../../src/application/copies/copiesFolder.ts';
import { createDailyCopies } from '../../src/application/copies/dailyCopies.ts';
import { lastGoodCopy } from '../../src/application/copies/makeCopy.ts';
import { serve } from '../../src/cli/serve.ts';
import type { CopiesState } from '../../src/records/copies.ts';
import { folderUnderTest, serverUnderTest } from '../server/serverUnderTest.ts';
import { filesBelow, savedFolder } from './savedFolder.ts';

vi.setConfig({ testTimeout: 120_000 });

/** A saved data folder whose copies are made by a clock that the test sets. */
async function copied() {
  const dataFolder = await folderUnderTest();
  await savedFolder(dataFolder);
  const folder = await folderUnderTest();
  const complaints: string[] = [];
  const clock = { at: new Date(2026, 10, 26, 3) };
  const copies = createDailyCopies({
    dataFolder,
    folder,
    now: () => clock.at,
    complain: (words) => complaints.push(words),
  });
  onTestFinished(() => copies.stop());
  const onDay = async (day: number) => {
    clock.at = new Date(2026, 10, day, 3);
    await copies.check();
  };
  return { dataFolder, folder, complaints, copies, onDay };
}

it('one copy a day, which comes back whole; older ones thin out, what was broken off is swept', async () => {
  const { dataFolder, folder, copies, complaints, onDay } = await copied();
  const half = join(folder, '.stonetone-2026-11-20.tar.part');
  await writeFile(half, 'half');
  const yesterday = new Date(2026, 10, 25);
  await utimes(half, yesterday, yesterday);
  await writeFile(join(folder, 'mine.txt'), 'mine');
  await onDay(26);
  await onDay(26);
  expect((await readdir(folder)).sort()).toEqual(['mine.txt', 'stonetone-2026-11-26.tar']);
  const file = join(folder, 'stonetone-2026-11-26.tar');
  expect(await copies.state()).toMatchObject({ lastGood: { file }, notMade: null });
  const again = join(await folderUnderTest(), 'again');
  expect(await restoreBackup(file, again)).toMatchObject({ ok: true });
  const before = await filesBelow(dataFolder);
  for (const [name, bytes] of await filesBelow(again))
    expect(bytes.length, name).toBe(before.get(name)!.length);
  for (let day = 27; day < 35; day++) await onDay(day);
  const kept = (await readdir(folder)).filter((name) => name.endsWith('.tar')).sort();
  expect(kept).toEqual(
    ['11-28', '11-29', '11-30', '12-01', '12-02', '12-03', '12-04'].map((day) => `stonetone-2026-${day}.tar`),
  );
  expect(complaints).toEqual([]);
});

it('a copy that fails is told, on screen and in the log, nothing older goes, and the next one heals it', async () => {
  const { folder, copies, complaints, onDay } = await copied();
  await onDay(26);
  const good = join(folder, 'stonetone-2026-11-26.tar');
  await rm(folder, { recursive: true });
  await onDay(27);
  expect((await copies.state()).notMade).toMatchObject({ failure: { code: 'output-unwritable' } });
  expect((await copies.state()).lastGood).toMatchObject({ file: good });
  expect(complaints).toEqual([expect.stringMatching(/^The daily copy failed: .*is not there/)]);
  await mkdir(folder);
  await onDay(27);
  expect(await copies.state()).toMatchObject({
    notMade: null,
    lastGood: { file: expect.stringMatching(/27\.tar$/) },
  });
});

it('a copy that was cut off is no copy: it is told, and made again', async () => {
  const { folder, copies, onDay } = await copied();
  await onDay(26);
  const file = join(folder, 'stonetone-2026-11-27.tar');
  await writeFile(file, await readFile(join(folder, 'stonetone-2026-11-26.tar')));
  await truncate(file, (await stat(file)).size >> 1);
  expect(await lastGoodCopy(folder)).toMatchObject({ file: join(folder, 'stonetone-2026-11-26.tar') });
  await onDay(27);
  expect((await copies.state()).notMade).toMatchObject({ failure: { code: 'backup-cut-off' } });
  await onDay(27);
  expect(await copies.state()).toMatchObject({ notMade: null, lastGood: { file } });
});

it('a damaged database names the last good copy, also where nobody says where the copies are', async () => {
  const { dataFolder, folder, onDay } = await copied();
  await onDay(26);
  const complained = vi.spyOn(console, 'error').mockImplementation(() => {});
  onTestFinished(() => complained.mockRestore());
  const database = join(dataFolder, 'stonetone.sqlite');
  const bytes = await readFile(database);
  bytes.fill(0x55, 4096, 12_288);
  await writeFile(database, bytes);
  const told = () => complained.mock.calls.map(([words]) => String(words)).join('\n');
  expect(await serve(['--data', dataFolder, '--port', '0', '--copies', folder])).toBe(2);
  expect(told()).toContain('database-damaged');
  expect(told()).toContain(
    `The last good backup is ${join(folder, 'stonetone-2026-11-26.tar')}, made 2026-11-26`,
  );
  expect(await rememberedCopies(dataFolder)).toEqual({ folder, stopped: false });
  complained.mockClear();
  expect(await serve(['--data', dataFolder, '--port', '0'])).toBe(2);
  expect(told()).toContain('The last good backup is');
  const inside = join(dataFolder, 'results');
  expect(await serve(['--data', dataFolder, '--port', '0', '--copies', inside])).toBe(2);
  expect(told()).toContain('lies inside the data folder');
});

it('a server says how its copies stand', async () => {
  const server = await serverUnderTest();
  expect(await server.json<CopiesState>('/api/copies')).toEqual({
    folder: null,
    lastGood: null,
    notMade: null,
    busy: null,
    copies: [],
    keeps: { days: 7, weeks: 4, months: 12 },
    freeBytes: null,
    sameDisk: null,
  });
});
