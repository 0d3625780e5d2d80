import { setTimeout as sleep } from 'node:timers/promises';
import type { RunSummary } from '../../src/records/run.ts';
import { type Caller, createCaller } from './caller.ts';

/** Benches at work at once, each with its own work, run and connections. */
export interface ManyBenches {
  /** Lets all of them work for so long. @returns what was answered how fast, ms, and what was refused */
  work(ms: number): Promise<WorkedAtBenches>;
  close(): void;
}

export interface WorkedAtBenches {
  readonly taps: readonly number[];
  readonly reads: ReadonlyMap<string, readonly number[]>;
  readonly faults: readonly string[];
}

interface Bench {
  readonly caller: Caller;
  readonly runId: string;
  taps: number;
}

/** A tap every second or so; a look at something every six taps or so. */
const tapEveryMs = 1000;
const tapsALook = 6;

/** Enters so many stones, works and runs. */
export async function openBenches(address: string, count: number): Promise<ManyBenches> {
  const benches: Bench[] = [];
  for (let number = 1; number <= count; number++) {
    const caller = createCaller(address);
    const size = { widthMm: 400, heightMm: 400 };
    const stone = await caller.want<{ id: string }>('POST', '/api/stones', { name: `L-${number}`, ...size });
    const draft = { title: `Load ${number}`, stoneId: stone.id };
    const work = await caller.want<{ id: string }>('POST', '/api/works', draft);
    const { id } = await caller.want<RunSummary>('POST', '/api/runs', { workId: work.id });
    benches.push({ caller, runId: id, taps: 0 });
  }
  return {
    async work(ms) {
      const taps: number[] = [];
      const reads = new Map<string, number[]>();
      const faults: string[] = [];
      const until = performance.now() + ms;
      await Promise.all(
        benches.map(async (bench) => {
          await sleep(Math.random() * tapEveryMs);
          while (performance.now() < until) {
            const next = performance.now() + tapEveryMs * (0.6 + 0.8 * Math.random());
            await tap(bench, taps, faults);
            if (Math.random() < 1 / tapsALook) await look(bench, reads, faults);
            await sleep(Math.max(0, next - performance.now()));
          }
        }),
      );
      return { taps, reads, faults };
    },
    close() {
      for (const { caller } of benches) caller.close();
    },
  };
}

async function tap(bench: Bench, took: number[], faults: string[]): Promise<void> {
  bench.taps += 1;
  const round = bench.taps % 40;
  const kind = round < 4 ? 'laid' : round >= 36 ? 'lifted' : 'moved';
  const at = new Date().toISOString();
  const place = `place-${bench.taps % 4}`;
  const body = { clientId: `tap ${bench.taps}`, kind, at, sentAt: at, payload: { place } };
  const answer = await bench.caller.ask('POST', `/api/runs/${bench.runId}/events`, body);
  took.push(answer.ms);
  if (answer.status !== 201) faults.push(`${answer.status} a tap: ${answer.bytes}`);
}

async function look({ caller, runId }: Bench, took: Map<string, number[]>, faults: string[]): Promise<void> {
  const paths = {
    'its events': `/api/runs/${runId}/events`,
    'its run': `/api/runs/${runId}`,
    'the rack': '/api/rack',
  };
  const all = Object.entries(paths);
  const [name, path] = all[Math.floor(Math.random() * all.length)]!;
  const answer = await caller.ask('GET', path);
  took.set(name, [...(took.get(name) ?? []), answer.ms]);
  if (answer.status !== 200) faults.push(`${answer.status} ${path}: ${answer.bytes}`);
}
