import { expect, it } from 'vitest';
import type { PullReading } from '../../records/proofSeries.ts';
import { agreementWords, doubtSentence, goodToPrint, pullsReadBy } from './goodToPrint.ts';

const both = { artist: true, printer: true };
const camera = pullsReadBy('camera', 0.005);

function pull(n: number, tone: number, changes: Partial<PullReading> = {}): PullReading {
  return { n, paper: 'rag', age: 5, lights: 0.1, middles: tone, darks: 0.8, faults: [], ...changes };
}

it('three comparable pulls within the tolerance, no standing fault, two signatures', () => {
  const pulls = [pull(1, 0.3), pull(2, 0.48), pull(3, 0.5), pull(4, 0.52)];
  expect(goodToPrint(pulls, 0.04, both, camera)).toEqual({
    met: true,
    pulls: [2, 3, 4],
    missing: [],
    reading: camera,
  });
});

it('says all that is missing', () => {
  const pulls = [pull(2, 0.47), pull(3, 0.5, { faults: ['slur', 'edge scum'] }), pull(4, 0.52)];
  expect(goodToPrint(pulls, 0.04, { artist: false, printer: false }, camera).missing).toEqual([
    'The middles range over 0.05, more than the tolerance of 0.04.',
    'Pull 3 has a fault that stands: slur and edge scum.',
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
  expect(goodToPrint(mixed, 0.04, both, camera)).toEqual({
    met: false,
    pulls: [3, 4],
    missing: ['Three comparable pulls are needed, of one paper and one age; there are 2.'],
    reading: camera,
  });
  const unread = [pull(1, 0.5), pull(2, 0.5, { lights: null }), pull(3, 0.5)];
  expect(goodToPrint(unread, 0.04, both, camera).missing).toEqual([
    'The lights were not read on every one of the three pulls.',
  ]);
});

it('a tone that nothing on the stone stands for is not asked for; one that was read on some pull is', () => {
  const pulls = [1, 2, 3].map((n) => pull(n, 0.5, { lights: null }));
  expect(goodToPrint(pulls, 0.04, both, camera, ['lights']).met).toBe(true);
  const some = [pull(1, 0.5), ...pulls.slice(1)];
  expect(goodToPrint(some, 0.04, both, camera, ['lights']).missing).toEqual([
    'The lights were not read on every one of the three pulls.',
  ]);
  const none = pulls.map((one) => ({ ...one, middles: null, darks: null }));
  expect(goodToPrint(none, 0.04, both, camera, ['lights', 'middles', 'darks']).missing).toEqual([
    'No tone was read on the three pulls.',
  ]);
});

it('agreement is never said more surely than the readings can tell', () => {
  const eye = pullsReadBy('eye', 0.1);
  expect(agreementWords(eye, 0.04)).toBe('as far as the eye can tell (±0.20)');
  expect(doubtSentence(eye, 0.04)).toContain('±0.20, more than the tolerance of 0.04');
  expect(agreementWords(camera, 0.04)).toBe('within the tolerance of 0.04 by photograph (each ±0.01)');
  expect(doubtSentence(camera, 0.04)).toBeNull();
  expect(agreementWords(pullsReadBy('camera', 0.03), 0.04)).toContain('as far as these photographs can tell');
  expect(agreementWords(pullsReadBy('camera', null), 0.04)).toContain('± not known yet');
});
