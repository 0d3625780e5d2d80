import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import type { FailureCode } from '../../src/foundation/failureRegistry.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const bin = join(root, 'bin/stonetone.js');

/** What a command said and how it ended. */
export interface Ended {
  readonly status: number;
  readonly said: string;
  readonly complained: string;
}

/** Runs the built program as a person at a terminal does. It is built first where it is not. */
export async function stonetone(...words: readonly string[]): Promise<Ended> {
  if (!existsSync(join(root, 'dist/node/cli/main.js'))) {
    spawnSync('npm', ['run', 'build:node'], { cwd: root });
  }
  const run = spawn(process.execPath, [bin, ...words], { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  let complained = '';
  run.stdout.setEncoding('utf8').on('data', (text: string) => {
    said += text;
  });
  run.stderr.setEncoding('utf8').on('data', (text: string) => {
    complained += text;
  });
  const status = await new Promise<number>((ended) => run.on('close', (code) => ended(code ?? -1)));
  return { status, said, complained };
}

/** A folder of its own for one test's files. */
export interface Bench {
  readonly folder: string;
  path(name: string): string;
  write(name: string, content: string | Uint8Array): Promise<string>;
  clear(): Promise<void>;
}

export async function aBench(): Promise<Bench> {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-cli-'));
  return {
    folder,
    path: (name) => join(folder, name),
    write: async (name, content) => {
      await writeFile(join(folder, name), content);
      return join(folder, name);
    },
    clear: () => rm(folder, { recursive: true, force: true }),
  };
}

/** A file among the test pictures. */
export function picture(name: string): string {
  return fileURLToPath(new URL(`pictures/${name}`, import.meta.url));
}

interface PairFile {
  readonly size: string;
  readonly stoneCorners: readonly [number, number][];
  readonly proofCorners: readonly [number, number][];
}

/** The arguments of `compare` for one of the kept pairs; a name given in `instead` replaces its value, null leaves it out. */
export function pairWords(
  pair: 'measured' | 'wrong-way-round',
  instead: Readonly<Record<string, string | null>> = {},
): string[] {
  const kept = JSON.parse(readFileSync(picture(`${pair}.json`), 'utf8')) as PairFile;
  const given: Record<string, string | null> = {
    stone: picture(`${pair}-stone.jpg`),
    proof: picture(`${pair}-print.jpg`),
    size: kept.size,
    'stone-corners': cornersText(kept.stoneCorners),
    'proof-corners': cornersText(kept.proofCorners),
    ...instead,
  };
  return Object.entries(given).flatMap(([name, value]) => (value === null ? [] : [`--${name}`, value]));
}

export function cornersText(corners: readonly (readonly [number, number])[]): string {
  return corners.map((corner) => corner.join(',')).join(' ');
}

/** One line: code, sentence, the path where there is one, remedy; nothing said on the other stream. */
export function expectFailure(ended: Ended, code: FailureCode, mentions: RegExp = /./): void {
  expect(ended.complained).toMatch(new RegExp(`^${code}: .+\\.( \\(\\S.*\\))? .+\\.\\n$`));
  expect(ended.complained).not.toMatch(/[{}]|undefined|NaN|\bat .+:\d+/);
  expect(ended.complained).toMatch(mentions);
  expect(ended.said).toBe('');
  expect(ended.status).toBe(2);
}

/** Runs `compare` into a folder that is not there, and must not be there afterwards. */
export async function expectRefusedInput(
  bench: Bench,
  words: readonly string[],
  code: FailureCode,
  mentions?: RegExp,
): Promise<void> {
  const out = bench.path('never written');
  expectFailure(await stonetone('compare', ...words, '--out', out), code, mentions);
  expect(existsSync(out)).toBe(false);
}
