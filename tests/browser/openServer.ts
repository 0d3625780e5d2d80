import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject, onTestFinished } from 'vitest';
import { type RunningServer, type ServerOptions, startServer } from '../../src/server/startServer.ts';

/** A server of its own with the network open, and the address by which phones come; both gone when the test is over. */
export async function openServer(
  options: Partial<ServerOptions> = {},
): Promise<{ readonly server: RunningServer; readonly network: string }> {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-phones-'));
  const started = await startServer({
    dataFolder: folder,
    port: 0,
    screens: inject('screens'),
    network: {},
    ...options,
  });
  if (!started.ok) throw new Error(started.error.message);
  onTestFinished(async () => {
    await started.value.stop();
    await rm(folder, { recursive: true, force: true });
  });
  return { server: started.value, network: started.value.network()!.addresses[0]!.address };
}
