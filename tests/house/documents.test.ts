import { existsSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, test } from 'vitest';
import { home, textOf, trackedFiles } from './trackedFiles.ts';

const documents = trackedFiles.filter((path) => path.endsWith('.md'));
const tracked = new Set(trackedFiles);
const folders = new Set(
  trackedFiles.flatMap((path) => path.split('/').map((_, i, all) => all.slice(0, i).join('/'))),
);
const pack = JSON.parse(textOf('package.json'));

/** A heading as a link names it: lower case, spaces to hyphens, signs left out. */
const anchorOf = (heading: string) =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replace(/\s/g, '-');

test.each(documents)('%s: every link leads somewhere', (path) => {
  const lost = [...textOf(path).matchAll(/\]\(([^)\s]+)[^)]*\)/g)]
    .map(([, target]) => target!)
    .filter((target) => !/^(?:https?|mailto):/.test(target))
    .filter((target) => {
      const [file, anchor] = target.split('#') as [string, string?];
      const to =
        file === '' ? path : normalize(join(dirname(path), decodeURIComponent(file))).replace(/\/$/, '');
      if (!tracked.has(to) && !folders.has(to)) return true;
      if (!anchor) return false;
      const headings = [...textOf(to).matchAll(/^#+\s+(.+)$/gm)].map(([, heading]) => anchorOf(heading!));
      return !headings.includes(anchor);
    });
  expect(lost).toEqual([]);
});

test.each(['README.md', 'CONTRIBUTING.md', 'docs/ARCHITECTURE.md', 'bench/README.md'])(
  '%s: commands are there to be run, files to be opened',
  (path) => {
    const text = textOf(path);
    const scripts = [...text.matchAll(/\bnpm run ([\w:-]+)/g)].map(([, script]) => script!);
    if (/\bnpm start\b/.test(text)) scripts.push('start');
    if (/\bnpm test\b/.test(text)) scripts.push('test');
    expect(scripts.filter((script) => !(script in pack.scripts))).toEqual([]);
    const commands = [...text.matchAll(/\bnpx stonetone ([a-z]+)/g)].map(([, command]) => command!);
    const known = [...textOf('src/cli/main.ts').matchAll(/case '([a-z]+)':/g)].map(([, command]) => command!);
    expect(commands.filter((command) => !known.includes(command))).toEqual([]);
    const files = [...text.matchAll(/`([\w.-]+(?:\/[\w.-]+)+\.(?:tsx?|js|json|md|py|cjs))`/g)].map(
      ([, file]) => file!,
    );
    expect(
      files.filter((file) => !trackedFiles.some((one) => one === file || one.endsWith(`/${file}`))),
    ).toEqual([]);
  },
);

/** What is asked for in words of the line itself, not of a command's. */
const besides = new Set(['help', 'version']);

test('every command stands in the help and in README', () => {
  const commands = [...textOf('src/cli/main.ts').matchAll(/case '([a-z]+)':/g)]
    .map(([, command]) => command!)
    .filter((command) => !besides.has(command));
  expect(commands.length).toBeGreaterThan(10);
  for (const place of ['src/cli/help.ts', 'README.md'])
    expect(
      commands.filter((command) => !textOf(place).includes(`stonetone ${command}`)),
      place,
    ).toEqual([]);
});

test('what package.json runs is there', () => {
  for (const target of Object.values<string>(pack.bin)) expect(existsSync(home + target), target).toBe(true);
  const files = Object.values<string>(pack.scripts).flatMap(
    (script) => script.match(/[\w./-]+\.(?:js|ts|json)\b/g) ?? [],
  );
  expect(files.filter((file) => !tracked.has(file))).toEqual([]);
});

test('README says what the machine must have', () => {
  for (const need of ['Node 20', 'g++', 'make', 'python3']) expect(textOf('README.md')).toContain(need);
});
