import { resolve } from 'node:path';
import { codeInText } from '../application/network/codeInText.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { NetworkState } from '../records/device.ts';
import type { NetworkWish } from '../server/network/openNetwork.ts';
import type { Arguments } from './arguments.ts';

/** The options about phones on the network. */
export const networkOptions = {
  lan: '',
  address: '192.168.1.20',
  certificate: 'self',
  key: 'key.pem',
} as const;

/**
 * How `serve` was asked to open the network; null where it was not.
 * @returns `argument-missing` for a certificate without its key, or anything about the network without `--lan`
 */
export function networkWish({ options }: Arguments): Result<NetworkWish | null> {
  const [address, certificate, key] = ['address', 'certificate', 'key'].map((name) => options.get(name));
  if (!options.has('lan')) {
    const given = Object.keys(networkOptions).find((name) => options.has(name));
    if (given === undefined) return ok(null);
    return fail(
      failure('argument-missing', { name: '--lan', example: `since --${given} is about the network` }),
    );
  }
  const wish = address === undefined ? {} : { address };
  if (certificate === undefined && key === undefined) return ok(wish);
  if (certificate === 'self' && key === undefined) return ok({ ...wish, certificate });
  if (certificate === undefined || certificate === 'self')
    return fail(
      failure('argument-missing', { name: '--certificate', example: 'the file that belongs to --key' }),
    );
  if (key === undefined)
    return fail(failure('argument-missing', { name: '--key', example: 'such as --key key.pem' }));
  return ok({ ...wish, certificate: { certificate: resolve(certificate), key: resolve(key) } });
}

/**
 * What the terminal says of the network: addresses, a QR code of the first, the certificate's fingerprint. The code that
 * lets a phone in is shown on the screen alone.
 * @param home the address of the screens on this machine
 */
export function networkWords(state: NetworkState, home: string, coloured: boolean): string {
  const [first, ...others] = state.addresses;
  if (first === undefined) return 'Phones: there is no network yet; Stonetone waits for one.';
  const lines = [`Phones and tablets: ${first.address}`];
  if (others.length > 0) lines.push(`  or ${others.map(({ address }) => address).join(', ')}`);
  lines.push('', codeInText(first.address, coloured), '');
  const { certificate } = state;
  if (certificate !== null) {
    lines.push(`SHA-256 fingerprint of its certificate, until ${certificate.until.slice(0, 10)}:`);
    lines.push(certificate.fingerprint);
    if (certificate.own)
      lines.push('A browser warns of it once: let it pass only where it shows this fingerprint.');
  } else {
    lines.push('Over plain http whoever shares this network could listen in; --certificate self ends that.');
  }
  lines.push(`The code that lets a phone in is asked for at ${home}/phones on this machine.`);
  return lines.join('\n');
}
