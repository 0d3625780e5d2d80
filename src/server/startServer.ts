import type { AddressInfo } from 'node:net';
import { openServices } from '../application/openServices.ts';
import { placePulls, type SamplePullsToPlace } from '../application/placePulls.ts';
import { placeSample, type SampleComparison } from '../application/placeSample.ts';
import { placeStudio, type SampleStudio } from '../application/placeStudio.ts';
import { placeTestStones, type SampleTestStonesToPlace } from '../application/placeTestStones.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { NetworkState } from '../records/device.ts';
import type { App } from './app.ts';
import { buildApp, noNetwork } from './buildApp.ts';
import { loopbackHosts } from './guards/trustedCaller.ts';
import { uploadLimitBytes } from './limits.ts';
import type { NetworkDoors } from './network/networkDoors.ts';
import { type NetworkWish, openNetwork } from './network/openNetwork.ts';

export interface ServerOptions {
  /** Folder that holds the database, the photographs and the results; made where it is missing. */
  readonly dataFolder: string;
  /** TCP port; 0 picks a free one. */
  readonly port: number;
  /** A loopback address; 127.0.0.1 unless given. */
  readonly host?: '127.0.0.1' | '::1' | 'localhost';
  /** Loads the invented studio's measured pair; called only where the data folder never had it. */
  readonly sample?: () => Promise<SampleComparison>;
  /** The invented studio's stones and works, for a data folder without any of its own. */
  readonly studio?: SampleStudio;
  /** Pulls of one of its works; they are placed while it is served already. */
  readonly pulls?: SamplePullsToPlace;
  /** Test stones that follow its first one; likewise. */
  readonly testStones?: SampleTestStonesToPlace;
  /** Where a copy of the data folder goes once a day while it is served. */
  readonly copiesFolder?: string;
  /** Opens the network to phones that are let in; not at all unless given. */
  readonly network?: NetworkWish;
  /** The measuring thread's module, the largest upload and the built screens, where not the usual ones. */
  readonly measuringModule?: URL;
  readonly pullModule?: URL;
  readonly largestBytes?: number;
  readonly screens?: string;
}

export interface RunningServer {
  /** Such as `http://127.0.0.1:4180`: for this machine itself. */
  readonly address: string;
  /** How phones reach it; null where the network was not opened. */
  network(): NetworkState | null;
  /** Closes event streams, stops measuring (it resumes at the next start), closes the database. */
  stop(): Promise<void>;
}

const loopback: readonly string[] = ['127.0.0.1', '::1', 'localhost'];

/**
 * Opens the data folder and serves the screens and the API on a loopback address.
 *
 * @returns `host-not-loopback`, `port-in-use`, or why the data folder cannot be used
 */
export async function startServer(options: ServerOptions): Promise<Result<RunningServer>> {
  const host = options.host ?? '127.0.0.1';
  if (!loopback.includes(host)) return fail(failure('host-not-loopback', { host }));
  const { dataFolder, measuringModule, pullModule } = options;
  const largestBytes = options.largestBytes ?? uploadLimitBytes;
  const opened = await openServices({
    dataFolder,
    largestBytes,
    ...(measuringModule && { measuringModule }),
    ...(pullModule && { pullModule }),
    ...(options.copiesFolder && { copiesFolder: options.copiesFolder }),
  });
  if (!opened.ok) return opened;
  const services = opened.value;
  let hosts: ReadonlySet<string> = new Set();
  let doors: NetworkDoors | null = null;
  const app = await buildApp(services, {
    hosts: () => hosts,
    networkHosts: () => doors?.hosts() ?? new Set(),
    network: () => doors?.state() ?? noNetwork,
    ...(options.screens && { screens: options.screens }),
  });
  let placing: Promise<void> = Promise.resolve();
  async function stop(): Promise<void> {
    await doors?.close();
    await app.close();
    await placing;
    await services.close();
  }
  const { sample, studio, pulls, testStones } = options;
  if (sample) await placeOrTell('sample', placeSample(services, sample));
  if (studio) await placeOrTell('sample studio', placeStudio(services, studio));
  const port = await listen(app, host, options.port);
  if (!port.ok) {
    await stop();
    return port;
  }
  hosts = loopbackHosts(port.value);
  if (options.network) {
    const opened = await openNetwork(app, services, port.value, options.network);
    if (!opened.ok) {
      await stop();
      return opened;
    }
    doors = opened.value;
  }
  // one after the other, the studio's own requests come between
  placing = (async () => {
    if (pulls) await placeOrTell('sample pulls', placePulls(services, pulls));
    if (testStones) await placeOrTell('sample test stones', placeTestStones(services, testStones));
  })();
  const shown = host === '::1' ? '[::1]' : host;
  return ok({ address: `http://${shown}:${port.value}`, network: () => doors?.state() ?? null, stop });
}

/** A person's own work does not depend on the sample: without it the program starts all the same. */
async function placeOrTell(what: string, placing: Promise<Result<null>>): Promise<void> {
  const why = await placing.then(
    (placed) => (placed.ok ? null : placed.error.message),
    (error: unknown) => (error instanceof Error ? error.message : String(error)),
  );
  if (why !== null) console.error(`The ${what} could not be placed: ${why}`);
}

async function listen(app: App, host: string, port: number): Promise<Result<number>> {
  try {
    await app.listen({ host, port });
    return ok((app.server.address() as AddressInfo).port);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    if (code !== 'EADDRINUSE' && code !== 'EACCES') throw error;
    return fail(failure('port-in-use', { port }));
  }
}
