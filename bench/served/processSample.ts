import { readdir, readFile } from 'node:fs/promises';

/** How a served process stands, seen from inside. */
export interface InsideSample {
  /** How late its timers were since the last sample, ms. */
  readonly loop: { readonly p50: number; readonly p99: number; readonly most: number };
  readonly heapBytes: number;
  /** Outside the heap: buffers and what libraries hold. */
  readonly externalBytes: number;
  /** Sockets, files, timers and threads that keep it alive. */
  readonly handles: number;
  /** Of all its threads since it began. */
  readonly processorMs: number;
}

/** Resident memory of a process and of all that descend from it, bytes. What they share is counted once each. */
export async function memoryOfTree(root: number): Promise<number> {
  const parents = new Map<number, number>();
  const memory = new Map<number, number>();
  for (const name of await readdir('/proc')) {
    const pid = Number(name);
    if (!Number.isInteger(pid)) continue;
    const text = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
    const number = (word: string) => Number(new RegExp(`^${word}:\\s+(\\d+)`, 'm').exec(text)?.[1] ?? 0);
    parents.set(pid, number('PPid'));
    memory.set(pid, number('VmRSS') * 1024);
  }
  const within = (pid: number): boolean =>
    pid === root || (parents.has(pid) && parents.get(pid) !== 0 && within(parents.get(pid)!));
  let bytes = 0;
  for (const [pid, held] of memory) if (within(pid)) bytes += held;
  return bytes;
}

/** How many files and sockets a process has open. */
export async function openFiles(pid: number): Promise<number> {
  return (await readdir(`/proc/${pid}/fd`)).length;
}
