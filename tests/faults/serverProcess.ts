import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

const serveFolder = fileURLToPath(new URL('../server/serveFolder.ts', import.meta.url));

/** Serves a data folder in a process of its own, which is gone when the test is over. */
export async function serveInProcess(
  dataFolder: string,
): Promise<{ readonly server: ChildProcess; readonly address: string }> {
  const server = spawn(process.execPath, ['--import', 'tsx', serveFolder, dataFolder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void server.kill('SIGKILL'));
  const [line] = (await once(server.stdout!, 'data')) as [Buffer];
  return { server, address: line.toString().trim() };
}

/** Ends it where it stands, as a power cut would. */
export async function killServer(server: ChildProcess): Promise<void> {
  const gone = once(server, 'exit');
  server.kill('SIGKILL');
  await gone;
}
