import type { RequestListener } from 'node:http';
import { codePicture } from '../../application/network/codePicture.ts';
import type { ReadyCertificate } from '../../application/network/networkCertificate.ts';
import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { NetworkState } from '../../records/device.ts';
import { inUrl } from '../guards/doorOf.ts';
import { type NetworkDoor, openDoor } from './openDoor.ts';

export interface NetworkDoorsOptions {
  readonly port: number;
  readonly answer: RequestListener;
  /** The addresses of this machine at the moment, best guess first. */
  readonly addresses: () => readonly string[];
  /** A certificate that serves these addresses; null: plain http. */
  readonly certificate: ((addresses: readonly string[]) => Promise<Result<ReadyCertificate>>) | null;
  /** Tells that what phones must be told has changed: addresses, or the certificate. */
  readonly changed: (state: NetworkState) => void;
  /** How often this machine's addresses are looked at, ms. */
  readonly lookEveryMs: number;
}

export interface NetworkDoors {
  state(): NetworkState;
  /** The Host headers that name one of the open doors. */
  hosts(): ReadonlySet<string>;
  close(): Promise<void>;
}

/**
 * Listens on each address, and follows them as they come and go.
 * @returns at the start `port-in-use`, `address-not-here` or what is wrong with the certificate; later such faults are
 *   left alone until the next look
 */
export async function openNetworkDoors(options: NetworkDoorsOptions): Promise<Result<NetworkDoors>> {
  let doors: readonly NetworkDoor[] = [];
  let certificate: ReadyCertificate | null = null;
  let state: NetworkState = { open: true, addresses: [], certificate: null };
  let hosts: ReadonlySet<string> = new Set();
  const scheme = options.certificate === null ? 'http' : 'https';
  const { port } = options;

  async function follow(): Promise<Failure | null> {
    const wanted = options.addresses();
    const fresh = wanted.filter((address) => !doors.some((door) => door.address === address));
    const gone = doors.filter(({ address }) => !wanted.includes(address));
    if (
      fresh.length === 0 &&
      gone.length === 0 &&
      (certificate !== null) === (options.certificate !== null && wanted.length > 0)
    )
      return null;
    if (options.certificate !== null && fresh.length > 0) {
      const ready = await options.certificate(wanted);
      if (!ready.ok) return ready.error;
      certificate = ready.value;
      for (const door of doors) door.show(certificate);
    }
    await Promise.all(gone.map((door) => door.close()));
    doors = doors.filter((door) => !gone.includes(door));
    let fault: Failure | null = null;
    for (const address of fresh) {
      const opened = await tryDoor({ address, port, answer: options.answer, certificate });
      if (opened.ok) doors = [...doors, opened.value];
      else fault = opened.error;
    }
    tell(wanted.filter((address) => doors.some((door) => door.address === address)));
    return fault;
  }

  function tell(addresses: readonly string[]): void {
    const standing = state;
    hosts = new Set(addresses.flatMap((address) => hostsOf(address, port, scheme)));
    state = {
      open: true,
      addresses: addresses.map((name) => {
        const address = `${scheme}://${inUrl(name)}${isUsual(port, scheme) ? '' : `:${port}`}`;
        return { address, picture: codePicture(address) };
      }),
      certificate: certificate?.told ?? null,
    };
    if (JSON.stringify(standing) !== JSON.stringify(state)) options.changed(state);
  }

  const fault = await follow();
  if (fault !== null) {
    await Promise.all(doors.map((door) => door.close()));
    return fail(fault);
  }
  let looking: Promise<unknown> = Promise.resolve();
  const look = setInterval(() => {
    looking = looking.then(follow).catch((error) => console.error('looking at the network failed:', error));
  }, options.lookEveryMs);
  look.unref();
  return ok({
    state: () => state,
    hosts: () => hosts,
    async close() {
      clearInterval(look);
      await looking;
      await Promise.all(doors.map((door) => door.close()));
    },
  });
}

function isUsual(port: number, scheme: 'http' | 'https'): boolean {
  return port === (scheme === 'http' ? 80 : 443);
}

/** Browsers leave the usual port out of the Host header. */
function hostsOf(address: string, port: number, scheme: 'http' | 'https'): readonly string[] {
  const host = inUrl(address).toLowerCase();
  return isUsual(port, scheme) ? [host, `${host}:${port}`] : [`${host}:${port}`];
}

async function tryDoor(options: Parameters<typeof openDoor>[0]): Promise<Result<NetworkDoor>> {
  try {
    return ok(await openDoor(options));
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    if (code === 'EADDRNOTAVAIL') return fail(failure('address-not-here', { address: options.address }));
    if (code === 'EADDRINUSE' || code === 'EACCES')
      return fail(failure('port-in-use', { port: options.port }));
    throw error;
  }
}
