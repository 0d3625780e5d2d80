import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { createCaller } from './caller.ts';
import { type InsideSample, memoryOfTree } from './processSample.ts';

const program = fileURLToPath(new URL('../../bin/stonetone.js', import.meta.url));
const built = fileURLToPath(new URL('../../dist/node/cli/main.js', import.meta.url));
const probe = new URL('./probe.mjs', import.meta.url).href;

/** The built program, serving a data folder in a process of its own, as in a studio. */
export interface ServedProcess {
  readonly address: string;
  readonly pid: number;
  /** From the start of the process to its first answer, ms. */
  readonly firstAnswerMs: number;
  /** What it said on its outputs so far. */
  words(): string;
  /** How it stands inside; with `collect` its garbage is collected first. */
  sample(collect: boolean): Promise<InsideSample>;
  /** Memory of it and of all that it started, bytes. */
  memory(): Promise<number>;
  /** Ends it where it stands, as a power cut would. */
  kill(): Promise<void>;
  /** Ends it as Ctrl+C does. @returns its exit status; null where it had to be killed after a minute */
  stop(): Promise<number | null>;
}

const stopWithinMs = 60_000;
/** A fresh folder gets the invented studio's records while it is served already, ms. */
const settledWithinMs = 15_000;

/** Starts `stonetone serve` on a free port, and asks it for a list until it answers. */
export async function serveBuilt(dataFolder: string, more: readonly string[] = []): Promise<ServedProcess> {
  if (!existsSync(built)) throw new Error('Stonetone is not built yet. Run: npm run build');
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const begun = performance.now();
  const words = ['--expose-gc', '--import', probe, program, 'serve', '--data', dataFolder];
  const child = spawn(process.execPath, [...words, '--port', String(port), ...more], {
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
  });
  let said = '';
  for (const output of [child.stdout!, child.stderr!])
    output.on('data', (chunk: Buffer) => {
      said = (said + chunk.toString()).slice(-20_000);
    });
  const gone = once(child, 'exit');
  await answers(child, address, () => said);
  const firstAnswerMs = performance.now() - begun;
  return {
    address,
    pid: child.pid!,
    firstAnswerMs,
    words: () => said,
    async sample(collect) {
      const told = once(child, 'message');
      child.send({ collect });
      return ((await told) as [InsideSample])[0];
    },
    memory: () => memoryOfTree(child.pid!),
    async kill() {
      child.kill('SIGKILL');
      await gone;
    },
    async stop() {
      child.kill('SIGINT');
      const late = setTimeout(() => child.kill('SIGKILL'), stopWithinMs);
      const [status] = (await gone) as [number | null];
      clearTimeout(late);
      return status;
    },
  };
}

/** The same, once the invented studio's own records are placed and nothing works in the background any more. */
export async function serveSettled(dataFolder: string): Promise<ServedProcess> {
  const served = await serveBuilt(dataFolder);
  await new Promise((resolve) => setTimeout(resolve, settledWithinMs));
  return served;
}

async function answers(child: ChildProcess, address: string, said: () => string): Promise<void> {
  const caller = createCaller(address);
  for (;;) {
    if (child.exitCode !== null || child.signalCode !== null) throw new Error(said());
    const answer = await caller.ask('GET', '/api/works?limit=1').catch(() => null);
    if (answer?.status === 200) break;
    await new Promise((resolve) => setTimeout(resolve, 3));
  }
  caller.close();
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  server.close();
  await once(server, 'close');
  return port;
}
