import { isIPv6 } from 'node:net';

/**
 * By which door a request came: `this-machine` through the loopback address, where nobody else can reach, or
 * `network`. Trust hangs on the door alone; what a request says of itself counts nothing here.
 */
export type Door = 'this-machine' | 'network';

/** The ends of a connection, as the system tells them. */
export interface Ends {
  readonly remoteAddress?: string | undefined;
  /** Not known of a request that was made without a connection. */
  readonly localAddress?: string | undefined;
}

/** A connection whose ends are not known (any more) counts as one from the network. */
export function doorOf({ remoteAddress, localAddress }: Ends): Door {
  const inside = isLoopback(remoteAddress) && (localAddress === undefined || isLoopback(localAddress));
  return inside ? 'this-machine' : 'network';
}

function isLoopback(address: string | undefined): boolean {
  return address === '::1' || /^(?:::ffff:)?127\.\d+\.\d+\.\d+$/.test(address ?? '');
}

/** How an address stands in front of a port in a URL or a Host header. */
export function inUrl(address: string): string {
  return isIPv6(address) ? `[${address}]` : address;
}
