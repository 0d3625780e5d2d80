import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { home } from './trackedFiles.ts';

test('every word of a screen is in the catalogue, in every language, with the same places to fill', () => {
  const check = spawnSync(process.execPath, ['tools/words.js', '--check'], { cwd: home, encoding: 'utf8' });
  expect(check.stderr).toBe('');
  expect(check.status).toBe(0);
});
