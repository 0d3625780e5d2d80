import { expect, it } from 'vitest';
import type { PullReading } from '../../records/proofSeries.ts';
import { goodToPrint } from './goodToPrint.ts';

const both = { artist: true, printer: true };

function pull(n: number, tone: number, changes: Partial<PullReading> = {}): PullReading {
  return { n, paper: 'rag', age: 5, lights: 0.1, middles: tone, darks: 0.8, faults: [], ...changes };
}

it('three comparable pulls within the tolerance, no open fault, two signatures', () => {
  const pulls = [pull(1, 0.3), pull(2, 0.48), pull(3, 0.5), pull(4, 0.52)];
  expect(goodToPrint(pulls, 0.04, both)).toEqual({ met: true, pulls: [2, 3, 4], missing: [] });
});

it('says all that is missing', () => {
  const pulls = [pull(2, 0.47), pull(3, 0.5, { faults: ['slur', 'edge scum'] }), pull(4, 0.52)];
  expect(goodToPrint(pulls, 0.04, { artist: false, printer: false }).missing).toEqual([
    'The middles range over 0.05, more than the tolerance of 0.04.',
    'Pull 3 has an open fault: slur and edge scum.',
    "The artist's signature is missing.",
    "The printer's signature is missing.",
  ]);
});

it('only comparable pulls count, and every tone must be read', () => {
  const mixed = [
    pull(1, 0.5, { paper: 'newsprint' }),
    pull(2, 0.5, { age: 1440 }),
    pull(3, 0.5),
    pull(4, 0.5),
  ];
  expect(goodToPrint(mixed, 0.04, both)).toEqual({
    met: false,
    pulls: [3, 4],
    missing: ['Three comparable pulls are needed, of one paper and one age; there are 2.'],
  });
  const unread = [pull(1, 0.5), pull(2, 0.5, { lights: null }), pull(3, 0.5)];
  expect(goodToPrint(unread, 0.04, both).missing).toEqual([
    'The lights were not read on every one of the three pulls.',
  ]);
});
