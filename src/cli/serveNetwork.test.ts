import { describe, expect, it } from 'vitest';
import type { NetworkState } from '../records/device.ts';
import { readArguments } from './arguments.ts';
import { networkOptions, networkWish, networkWords } from './serveNetwork.ts';

function wish(...words: string[]) {
  const given = readArguments(words, networkOptions);
  if (!given.ok) throw new Error(given.error.message);
  return networkWish(given.value);
}

describe('the network is opened', () => {
  it('only where --lan says so', () => {
    expect(wish()).toEqual({ ok: true, value: null });
    expect(wish('--lan')).toEqual({ ok: true, value: {} });
    for (const words of [
      ['--address', '10.0.0.2'],
      ['--certificate', 'self'],
      ['--key', 'k.pem'],
    ])
      expect(wish(...words)).toMatchObject({ ok: false, error: { code: 'argument-missing' } });
  });

  it('with a certificate made here, or one given with its key', () => {
    expect(wish('--lan', '--certificate', 'self')).toMatchObject({ value: { certificate: 'self' } });
    const given = wish('--lan', '--certificate', '/c.pem', '--key', '/k.pem', '--address', '10.0.0.2');
    expect(given).toEqual({
      ok: true,
      value: { address: '10.0.0.2', certificate: { certificate: '/c.pem', key: '/k.pem' } },
    });
    for (const words of [
      ['--certificate', 'c.pem'],
      ['--key', 'k.pem'],
      ['--certificate', 'self', '--key', 'k.pem'],
    ])
      expect(wish('--lan', ...words), words.join(' ')).toMatchObject({ error: { code: 'argument-missing' } });
  });
});

describe('the terminal', () => {
  const picture = { size: 1, path: '' };
  const state: NetworkState = {
    open: true,
    addresses: [
      { address: 'https://192.168.7.2:4180', picture },
      { address: 'https://10.0.0.2:4180', picture },
    ],
    certificate: { fingerprint: 'AA:BB', until: '2027-01-02T00:00:00.000Z', own: true },
  };
  const home = 'http://127.0.0.1:4180';

  it('tells addresses, the square, the fingerprint and where the code is, and never a code', () => {
    const said = networkWords(state, home, true);
    for (const part of [
      'https://192.168.7.2:4180',
      'https://10.0.0.2:4180',
      'AA:BB',
      '2027-01-02',
      `${home}/phones`,
    ])
      expect(said).toContain(part);
    const square = said.split('\n').filter((line) => line.startsWith('\u001b[30;107m'));
    // two rows of modules to a line; ISO/IEC 18004: 21 + 4 (version - 1) modules, and 4 quiet ones on each side
    const across = [...square[0]!.slice('\u001b[30;107m'.length, -'\u001b[0m'.length)].length;
    expect([(across - 8 - 17) % 4, Math.ceil(across / 2)]).toEqual([0, square.length]);
    expect(networkWords(state, home, false)).not.toContain('\u001b');
  });

  it('warns of plain http, and waits where there is no network', () => {
    expect(networkWords({ ...state, certificate: null }, home, false)).toContain('could listen in');
    expect(networkWords({ ...state, addresses: [] }, home, false)).toContain('waits for one');
  });
});
