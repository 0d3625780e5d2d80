import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { SpoiledLine } from './readSpoiled.ts';

export interface ReadPictures {
  /** How many ended by each code; `read` for those that were a picture all the same. */
  readonly ends: ReadonlyMap<string, number>;
  readonly slowestMs: number;
  /** The most memory that the process ever held, MB. */
  readonly mostMegabytes: number;
  /** Crashes, hangs, errors thrown, unclear sentences, words on the terminal: with the number and how it was spoiled. */
  readonly faults: readonly string[];
}

const reader = fileURLToPath(new URL('./readSpoiled.ts', import.meta.url));
/** A picture that takes longer hangs, ms. */
const longestMs = 60_000;
/** The most memory that reading one small spoiled picture may take, MB: what measuring a pair of sound ones may. */
export const memoryLimitMegabytes = 900;

/** Reads spoiled pictures 0 to `count` of a seed, and goes on after one that ended the process. */
export async function readSpoiledPictures(seed: number, count: number): Promise<ReadPictures> {
  const ends = new Map<string, number>();
  const faults: string[] = [];
  let slowestMs = 0;
  let mostMegabytes = 0;

  function judge({ number, what, end }: SpoiledLine): void {
    if (end === undefined) return;
    const { code, message, ms, mostMegabytes: held } = end;
    ends.set(code, (ends.get(code) ?? 0) + 1);
    slowestMs = Math.max(slowestMs, ms);
    if (held > memoryLimitMegabytes && mostMegabytes <= memoryLimitMegabytes) {
      faults.push(`${number} ${what}: ${Math.round(held)} MB`);
    }
    mostMegabytes = Math.max(mostMegabytes, held);
    const clear = /^(picture|file)-/.test(code) && message.length < 400 && !/[{}\n\p{C}]/u.test(message);
    if (code !== 'read' && !clear) faults.push(`${number} ${what}: ${code} ${message}`);
  }

  let next = 0;
  while (next < count) {
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', reader, String(seed), String(next), String(count)],
      {
        stdio: ['ignore', 'pipe', 'pipe'],
      },
    );
    let now: SpoiledLine | null = null;
    let hangs = false;
    let timer = setTimeout(() => {}, 0);
    let said = '';
    child.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString();
    });
    const exited = new Promise<string>((resolve) =>
      child.on('exit', (code, signal) => resolve(signal ?? String(code))),
    );
    for await (const line of createInterface({ input: child.stdout })) {
      if (!line.startsWith('{')) {
        faults.push(`${now?.number} ${now?.what}: writes ${line.slice(0, 200)}`);
        continue;
      }
      const heard = JSON.parse(line) as SpoiledLine;
      clearTimeout(timer);
      timer = setTimeout(() => {
        hangs = true;
        child.kill('SIGKILL');
      }, longestMs);
      if (said !== '') faults.push(`${now?.number} ${now?.what}: writes ${said.slice(0, 200)}`);
      said = '';
      now = heard;
      judge(heard);
    }
    clearTimeout(timer);
    const status = await exited;
    if (status === '0') break;
    faults.push(
      `${now?.number} ${now?.what}: ${hangs ? 'hangs' : `ends the process (${status}) ${said.slice(-300)}`}`,
    );
    next = (now?.number ?? count) + 1;
  }
  return { ends, slowestMs, mostMegabytes, faults };
}
