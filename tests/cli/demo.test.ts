import { writeFile } from 'node:fs/promises';
import { expect, it, onTestFinished } from 'vitest';
import { aBench, expectFailure, stonetone } from './stonetone.ts';

it('the demo says what it can write, and leaves a folder alone that holds something', async () => {
  const bench = await aBench();
  onTestFinished(() => bench.clear());
  expectFailure(await stonetone('demo', '--data', bench.path('new')), 'argument-missing', /year/);
  expectFailure(await stonetone('demo', 'week', '--data', bench.path('new')), 'argument-unknown', /week/);
  expectFailure(await stonetone('demo', 'year'), 'argument-missing', /--data/);
  await writeFile(bench.path('mine.txt'), 'mine');
  expectFailure(await stonetone('demo', 'year', '--data', bench.folder), 'folder-taken', /mine\.txt/);
  expect((await stonetone('help')).said).toContain('stonetone demo year --data DIR');
});
