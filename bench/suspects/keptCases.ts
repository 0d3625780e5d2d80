import { fork } from 'node:child_process';
import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { ReadCase } from './caseFeatures.ts';
import type { AskedCase } from './caseProcess.ts';

/** A case with the processor's time that it took. */
export type KeptCase = ReadCase & { readonly cpuSeconds: number };

/**
 * Reads the cases of indices, one process for each core. Every case that was read is kept as a line of a file at once, and not read
 * again, so that a run can be broken off and gone on with.
 * @param until milliseconds since 1970, from when on no new case is begun.
 * @returns all cases of the indices that are kept by then.
 */
export async function keptCases(
  asked: Omit<AskedCase, 'index'>,
  [from, to]: readonly [number, number],
  { file, processes, until }: { readonly file: string; readonly processes: number; readonly until: number },
): Promise<KeptCase[]> {
  mkdirSync(dirname(file), { recursive: true });
  const kept = new Map<number, KeptCase>();
  for (const line of existsSync(file) ? readFileSync(file, 'utf8').split('\n') : []) {
    const one = parsed(line);
    if (one) kept.set(one.index, one);
  }
  const open = Array.from({ length: to - from }, (_, i) => from + i).filter((index) => !kept.has(index));
  const work = () =>
    new Promise<void>((done, failed) => {
      const child = fork(new URL('./caseProcess.ts', import.meta.url), { serialization: 'advanced' });
      const next = () => {
        const index = Date.now() < until ? open.shift() : undefined;
        if (index === undefined) child.disconnect();
        else child.send({ ...asked, index });
      };
      child.on('message', (one: KeptCase) => {
        appendFileSync(file, `${JSON.stringify(one)}\n`);
        kept.set(one.index, one);
        next();
      });
      child.on('exit', (status) => (status ? failed(new Error(`a case failed: ${status}`)) : done()));
      next();
    });
  await Promise.all(Array.from({ length: Math.min(processes, open.length) }, work));
  return [...kept.values()]
    .filter(({ index }) => index >= from && index < to)
    .toSorted((a, b) => a.index - b.index);
}

/** null for a line that was broken off. */
function parsed(line: string): KeptCase | null {
  try {
    return JSON.parse(line) as KeptCase;
  } catch {
    return null;
  }
}
