import { type CertificateWish, networkCertificate } from '../../application/network/networkCertificate.ts';
import type { Services } from '../../application/openServices.ts';
import type { Result } from '../../foundation/result.ts';
import type { NetworkState } from '../../records/device.ts';
import type { App } from '../app.ts';
import { type NetworkDoors, openNetworkDoors } from './networkDoors.ts';
import { ownAddresses } from './ownAddresses.ts';

/** How the network is to be opened. */
export interface NetworkWish {
  /** The one address to listen on; all private ones of this machine unless given. */
  readonly address?: string;
  /** Plain http unless given. */
  readonly certificate?: CertificateWish;
  /** Told whenever addresses or certificate are others than before, the first time included. */
  readonly changed?: (state: NetworkState) => void;
}

/** A shed's net drops and comes back under another address, ms. */
const lookEveryMs = 5000;

/** Opens the network's doors beside the loopback one, on the same port. */
export function openNetwork(
  app: App,
  services: Pick<Services, 'store' | 'now'>,
  port: number,
  { address, certificate, changed = () => {} }: NetworkWish,
): Promise<Result<NetworkDoors>> {
  return openNetworkDoors({
    port,
    answer: (request, response) => app.routing(request, response),
    addresses: address === undefined ? ownAddresses : () => [address],
    certificate:
      certificate === undefined
        ? null
        : (addresses) =>
            networkCertificate(services.store.networkFiles, certificate, addresses, services.now()),
    changed,
    lookEveryMs,
  });
}
