import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { writeFolder } from './outputFolder.ts';

async function aFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-output-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

const bytes = (text: string) => new TextEncoder().encode(text);

it('makes the folder, writes each file whole and leaves nothing beside them', async () => {
  const folder = join(await aFolder(), 'deep', 'plan');
  const files = new Map([
    ['plan.json', bytes('{}')],
    ['map.pdf', bytes('map')],
  ]);
  expect((await writeFolder(folder, files)).ok).toBe(true);
  expect((await readdir(folder)).sort()).toEqual(['map.pdf', 'plan.json']);
  expect(await readFile(join(folder, 'map.pdf'), 'utf8')).toBe('map');
});

it('takes away what an earlier run left, and nothing of anybody else', async () => {
  const folder = await aFolder();
  await writeFile(join(folder, 'steps.pdf'), 'old');
  await writeFile(join(folder, 'notes.txt'), 'mine');
  const written = await writeFolder(folder, new Map([['plan.json', bytes('{}')]]), [
    'plan.json',
    'steps.pdf',
  ]);
  expect(written.ok).toBe(true);
  expect((await readdir(folder)).sort()).toEqual(['notes.txt', 'plan.json']);
});

it('leaves no unfinished file where one cannot be put in its place', async () => {
  const folder = await aFolder();
  await mkdir(join(folder, 'plan.json', 'inside'), { recursive: true });
  const written = await writeFolder(folder, new Map([['plan.json', bytes('{}')]]));
  expect(written).toMatchObject({ ok: false, error: { code: 'output-unwritable' } });
  expect(await readdir(folder)).toEqual(['plan.json']);
});
