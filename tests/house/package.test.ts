import { expect, test } from 'vitest';
import { textOf, trackedFiles } from './trackedFiles.ts';

const pack = JSON.parse(textOf('package.json'));
const publicRegistry = ['registry', 'npmjs', 'org'].join('.');
const lock = JSON.parse(textOf('package-lock.json'));

test('the licence is named, and its text is there', () => {
  expect(pack.license).toBe('MIT');
  expect(lock.packages[''].license).toBe(pack.license);
  expect(trackedFiles).toContain('LICENSE');
  expect(textOf('LICENSE')).toContain('MIT License');
});

test('the lock file fetches from nowhere but the public registry, and knows what it fetches', () => {
  const entries = Object.entries<{ resolved?: string; integrity?: string; link?: boolean }>(lock.packages);
  const foreign = entries.filter(([, { resolved }]) => resolved && new URL(resolved).host !== publicRegistry);
  expect(foreign.map(([name]) => name)).toEqual([]);
  const unsure = entries.filter(([name, { integrity, link }]) => name !== '' && !link && !integrity);
  expect(unsure.map(([name]) => name)).toEqual([]);
});

test('package.json and its lock agree', () => {
  expect(lock.version).toBe(pack.version);
  for (const kind of ['dependencies', 'devDependencies'] as const)
    expect(lock.packages[''][kind]).toEqual(pack[kind]);
});

test('the machine’s Node is the one that README and package.json name', () => {
  expect(pack.engines.node).toMatch(/^>=20/);
  const [major] = process.versions.node.split('.').map(Number);
  expect(major).toBeGreaterThanOrEqual(20);
});
