import { existsSync } from 'node:fs';
import { copyFile, mkdir, readdir, readFile, rm, stat, truncate, writeFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filesBelow, savedFolder } from '../faults/savedFolder.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
let data: string;
let saved: string;
let photograph: string;

beforeAll(async () => {
  bench = await aBench();
  data = bench.path('data');
  saved = bench.path('saved.tar');
  [photograph] = (await savedFolder(data)) as [string];
  await writeFile(bench.path('data/cache/made again'), 'not to be saved');
  const ended = await stonetone('backup', '--data', data, '--to', saved);
  expect(ended).toMatchObject({ status: 0, complained: '' });
  expect(ended.said).toMatch(
    /^Saved a database of version \d+, 2 photographs, 2 files of results, .* MB in all to /,
  );
});
afterAll(() => bench.clear());

it('holds everything but what can be made again, verifies, and comes back whole', async () => {
  const verified = await stonetone('verify', saved);
  expect(verified).toMatchObject({ status: 0, complained: '' });
  const again = bench.path('again');
  await mkdir(again);
  expect(await stonetone('restore', saved, '--data', again)).toMatchObject({ status: 0, complained: '' });
  const [before, after] = [await filesBelow(data), await filesBelow(again)];
  expect([...after.keys()].filter((name) => name !== 'stonetone.sqlite')).toEqual(
    [...before.keys()].filter((name) => /^(photographs|results)\//.test(name)),
  );
  for (const [name, bytes] of after) if (name !== 'stonetone.sqlite') expect(bytes).toEqual(before.get(name));
  expect((await readdir(bench.folder)).filter((name) => name.startsWith('.'))).toEqual([]);
});

describe('a backup that is not as it was written', () => {
  /** A copy with one byte changed; where, as a share of the file or counted from its end. */
  async function flipped(at: number): Promise<string> {
    const bytes = await readFile(saved);
    bytes[at] = bytes[at]! ^ 1;
    return bench.write(`flipped at ${at}.tar`, bytes);
  }

  it('is found wherever the byte lies, and the part is named', async () => {
    const bytes = await readFile(saved);
    const contentOf = (name: string) => bytes.indexOf(name) + 512;
    const result = [...(await filesBelow(data)).keys()].find((name) => name.endsWith('sheet.txt'))!;
    const places: readonly [number, RegExp][] = [
      [contentOf('stonetone.sqlite') + 3000, /damaged: stonetone\.sqlite is not what was saved/],
      [contentOf(photograph) + 5, RegExp(`damaged: ${photograph} is not what was saved`)],
      [contentOf(result) + 1, RegExp(`damaged: ${result} is not what was saved`)],
      [contentOf('manifest.json') + 3, /damaged: manifest\.json is not what was saved/],
      [bytes.indexOf(photograph) + 20, /damaged: nothing can be read after stonetone\.sqlite/],
      [contentOf(result) + 400, /damaged: its parts are whole, but what binds them is not/],
      [bytes.length - 1500, /damaged: its parts are whole, but what binds them is not/],
      [bytes.length - 1, /damaged: its parts are whole, but what binds them is not/],
    ];
    for (const [at, mentions] of places) {
      expectFailure(await stonetone('verify', await flipped(at)), 'backup-damaged', mentions);
    }
    expectFailure(await stonetone('verify', await flipped(3)), 'backup-unknown');
  });

  it('is found where it was half copied, whatever the half, and is not restored', async () => {
    const { size } = await stat(saved);
    for (const kept of [size - 1, size - 2048, size >> 1, 1500]) {
      const half = bench.path(`half ${kept}.tar`);
      await copyFile(saved, half);
      await truncate(half, kept);
      const ended = await stonetone('verify', half);
      expect(ended.status).toBe(2);
      expect(ended.complained).toMatch(/^backup-(cut-off|damaged): /);
    }
    const half = bench.path(`half ${size >> 1}.tar`);
    const again = bench.path('from half');
    expectFailure(
      await stonetone('restore', half, '--data', again),
      'backup-cut-off',
      /ends too early, after /,
    );
    expect(existsSync(again)).toBe(false);
    // as some copies leave it: as long as the whole, empty from the middle on
    await truncate(half, size);
    expectFailure(await stonetone('verify', half), 'backup-cut-off');
  });
});

describe('what cannot be done is said', () => {
  it('a file that is no backup, or not there', async () => {
    const text = await bench.write('notes.txt', 'washout 3 min');
    expectFailure(await stonetone('verify', text), 'backup-unknown', /notes\.txt/);
    expectFailure(await stonetone('restore', text, '--data', bench.path('x')), 'backup-unknown');
    expectFailure(await stonetone('verify', await bench.write('empty.tar', '')), 'backup-unknown', /empty/);
    expectFailure(await stonetone('verify', bench.folder), 'backup-unknown', /a folder/);
    expectFailure(await stonetone('verify', bench.path('never')), 'file-missing', /never/);
    expectFailure(await stonetone('verify'), 'argument-missing');
  });

  it('a folder or a file that is taken is left alone', async () => {
    const taken = bench.path('taken');
    await mkdir(taken);
    await writeFile(bench.path('taken/mine.txt'), 'mine');
    expectFailure(await stonetone('restore', saved, '--data', taken), 'folder-taken', /mine\.txt/);
    expectFailure(await stonetone('restore', saved, '--data', saved), 'folder-taken', /a file has that name/);
    expect(await readdir(taken)).toEqual(['mine.txt']);
    const file = await bench.write('mine.tar', 'mine');
    expectFailure(await stonetone('backup', '--data', data, '--to', file), 'file-taken', /mine\.tar/);
    expect(await readFile(file, 'utf8')).toBe('mine');
  });

  it('no data folder, no place to write, a place inside the data folder', async () => {
    const to = bench.path('never.tar');
    expectFailure(await stonetone('backup', '--data', bench.folder, '--to', to), 'data-folder-missing');
    const nowhere = bench.path('nowhere/deep.tar');
    expectFailure(await stonetone('backup', '--data', data, '--to', nowhere), 'output-unwritable', /nowhere/);
    const inside = bench.path('data/results/saved.tar');
    expectFailure(await stonetone('backup', '--data', data, '--to', inside), 'output-unwritable', /inside/);
    expectFailure(await stonetone('backup', '--data', data), 'argument-missing', /--to/);
    expect(existsSync(to)).toBe(false);
  });

  it('a damaged database is named and not saved', async () => {
    const broken = bench.path('broken');
    await stonetone('restore', saved, '--data', broken);
    const file = bench.path('broken/stonetone.sqlite');
    const bytes = await readFile(file);
    bytes.fill(0x55, 4096, 12_288);
    await writeFile(file, bytes);
    const to = bench.path('broken.tar');
    const ended = await stonetone('backup', '--data', broken, '--to', to);
    expectFailure(ended, 'database-damaged', /stonetone\.sqlite.*stonetone restore FILE/);
    await writeFile(file, 'certainly no database '.repeat(100));
    expectFailure(await stonetone('backup', '--data', broken, '--to', to), 'database-damaged');
    expect((await readdir(bench.folder)).filter((name) => name.includes('broken.tar'))).toEqual([]);
  });

  it('a photograph that is lost or altered is told, and the rest is saved', async () => {
    const poor = bench.path('poor');
    await stonetone('restore', saved, '--data', poor);
    const [first, second] = [...(await filesBelow(poor)).keys()].filter((name) => /^photographs/.test(name));
    await rm(bench.path(`poor/${first}`));
    await writeFile(bench.path(`poor/${second}`), 'altered');
    const to = bench.path('poor.tar');
    const ended = await stonetone('backup', '--data', poor, '--to', to);
    expect(ended.status).toBe(0);
    expect(ended.said).toContain(`Mind: ${first} is gone from the data folder.`);
    expect(ended.said).toContain(`Mind: ${second} is no longer what was kept`);
    expect(await stonetone('verify', to)).toMatchObject({
      status: 0,
      said: expect.stringContaining('Mind: '),
    });
  });
});
