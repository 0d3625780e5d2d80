import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { backupOptions } from '../../src/cli/backup.ts';
import { compareOptions } from '../../src/cli/compare.ts';
import { planOptions } from '../../src/cli/plan.ts';
import { restoreOptions } from '../../src/cli/restore.ts';
import { serveOptions } from '../../src/cli/serve.ts';
import { expectFailure, stonetone } from './stonetone.ts';

it('help names every command and every option, and so do no words at all', async () => {
  const [help, dashes, none] = await Promise.all([stonetone('help'), stonetone('--help'), stonetone()]);
  for (const ended of [help, dashes, none]) {
    expect(ended.status).toBe(0);
    expect(ended.said).toBe(help.said);
  }
  for (const command of ['serve', 'compare', 'plan', 'mix', 'backup', 'restore', 'verify', 'help', 'version'])
    expect(help.said).toContain(command);
  for (const option of [compareOptions, planOptions, serveOptions, backupOptions, restoreOptions].flatMap(
    Object.keys,
  )) {
    expect(help.said).toMatch(RegExp(`--${option}\\b`));
  }
});

it('version is that of the package', async () => {
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const ended = await stonetone('version');
  expect(ended.status).toBe(0);
  expect(ended.said).toContain(version);
});

it('an unknown command, and an unusable port', async () => {
  expectFailure(await stonetone('measure'), 'argument-unknown', /measure/);
  expectFailure(await stonetone('serve', '--port', '99999'), 'argument-malformed', /--port/);
  expectFailure(await stonetone('serve', '--port', 'harbour'), 'argument-malformed', /--port/);
});
