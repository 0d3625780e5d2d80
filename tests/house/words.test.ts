import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { home, textOf, trackedFiles } from './trackedFiles.ts';

test('every word of a screen is in the catalogue, in every language, with the same places to fill', () => {
  const check = spawnSync(process.execPath, ['tools/words.js', '--check'], { cwd: home, encoding: 'utf8' });
  expect(check.stderr).toBe('');
  expect(check.status).toBe(0);
});

test('no style sheet says a word of its own: what it shows is given to it by the screen', () => {
  const said = trackedFiles
    .filter((path) => /^src\/web\/.*\.css$/.test(path))
    .flatMap((path) =>
      (textOf(path).match(/content:[^;"]*"[^"]*\p{L}[^"]*"/gu) ?? []).map((words) => `${path}: ${words}`),
    );
  expect(said).toEqual([]);
});
