/**
 * Builds Stonetone unless what is built is newer than all it is built from. npm runs this after `npm ci`, and also when
 * `npx stonetone` is first used in a checkout: that must not take another minute.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const home = fileURLToPath(new URL('..', import.meta.url));
const built = ['dist/node/cli/main.js', 'dist/web/index.html'].map((path) => home + path);
const sources = [
  ...readdirSync(`${home}src`, { recursive: true }).map((name) => `src/${name}`),
  'tsconfig.json',
  'tsconfig.build.json',
  'vite.config.ts',
  'vite.serve.config.ts',
  'package-lock.json',
].map((path) => home + path);

const changedAt = (path) => statSync(path).mtimeMs;

if (!built.every(existsSync) || Math.min(...built.map(changedAt)) <= Math.max(...sources.map(changedAt))) {
  const build = spawnSync('npm', ['run', 'build'], {
    cwd: home,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  process.exitCode = build.status ?? 1;
}
