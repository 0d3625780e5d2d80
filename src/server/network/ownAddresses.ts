import { BlockList } from 'node:net';
import { networkInterfaces } from 'node:os';

/** Addresses that no router sends on: RFC 1918, link-local (RFC 3927), shared by carriers and private nets (RFC 6598). */
const privateNets = new BlockList();
privateNets.addSubnet('10.0.0.0', 8);
privateNets.addSubnet('172.16.0.0', 12);
privateNets.addSubnet('192.168.0.0', 16);
privateNets.addSubnet('169.254.0.0', 16);
privateNets.addSubnet('100.64.0.0', 10);

/** Nets inside this machine, for containers and virtual machines: no phone is there. */
const innerNames = /^(?:docker|br-|veth|virbr|vmnet|vboxnet|podman|cni|lxc)/;

/** What the system tells of its interfaces: name → addresses. */
export type Interfaces = ReturnType<typeof networkInterfaces>;

/**
 * The IPv4 addresses on which phones in the room may find this machine, those of a wireless or wired net first. Where it
 * has private ones, its others are left out: they may face the whole world.
 */
export function ownAddresses(interfaces: Interfaces = networkInterfaces()): readonly string[] {
  const found = Object.entries(interfaces).flatMap(([name, ends]) =>
    (ends ?? [])
      .filter(({ family, internal }) => family === 'IPv4' && !internal)
      .map(({ address }) => ({ address, inner: innerNames.test(name), own: isPrivate(address) })),
  );
  const kept = found.some(({ own }) => own) ? found.filter(({ own }) => own) : found;
  return kept.sort((one, other) => rank(one) - rank(other)).map(({ address }) => address);
}

/** Whether no router of the world at large sends packets to this address. */
function isPrivate(address: string): boolean {
  return privateNets.check(address);
}

function rank({ address, inner }: { readonly address: string; readonly inner: boolean }): number {
  if (inner) return 2;
  return address.startsWith('169.254.') ? 1 : 0;
}
