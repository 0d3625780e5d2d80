import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { home, textOf } from './trackedFiles.ts';

test('THIRD-PARTY-NOTICES is what the lock file and the packages say today', () => {
  const check = spawnSync(process.execPath, ['tools/notices.js', '--check'], { cwd: home, encoding: 'utf8' });
  expect(check.stderr).toBe('');
  expect(check.status).toBe(0);
});

test('every package that is installed to run Stonetone is in it', () => {
  const notices = textOf('THIRD-PARTY-NOTICES');
  const missing = Object.keys(JSON.parse(textOf('package.json')).dependencies).filter(
    (name) => !notices.includes(`\n${name} `),
  );
  expect(missing).toEqual([]);
  expect(notices).toContain('SIL OPEN FONT LICENSE');
});
