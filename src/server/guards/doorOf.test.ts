import { expect, it } from 'vitest';
import { doorOf, inUrl } from './doorOf.ts';

it('this machine is whoever came to the loopback address from it; all else is the network', () => {
  const own = [
    { remoteAddress: '127.0.0.1', localAddress: '127.0.0.1' },
    { remoteAddress: '::1', localAddress: '::1' },
    { remoteAddress: '::ffff:127.0.0.1', localAddress: '::ffff:127.0.0.1' },
    { remoteAddress: '127.0.0.1' },
  ];
  for (const ends of own) expect(doorOf(ends), JSON.stringify(ends)).toBe('this-machine');
  const network = [
    { remoteAddress: '192.168.7.31', localAddress: '192.168.7.2' },
    // this machine itself, by its own address on the network
    { remoteAddress: '192.168.7.2', localAddress: '192.168.7.2' },
    { remoteAddress: '127.0.0.1', localAddress: '192.168.7.2' },
    { remoteAddress: '192.168.7.31', localAddress: '127.0.0.1' },
    { remoteAddress: '127.0.0.1.evil.example', localAddress: '127.0.0.1' },
    { remoteAddress: '', localAddress: '127.0.0.1' },
    {},
  ];
  for (const ends of network) expect(doorOf(ends), JSON.stringify(ends)).toBe('network');
});

it('an IPv6 address stands in brackets', () => {
  expect([inUrl('192.168.7.2'), inUrl('fd00::2')]).toEqual(['192.168.7.2', '[fd00::2]']);
});
