import { expect, test } from 'vitest';
import type { PlanZone } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import { closeNeighbours } from './neighbours.ts';

const strip = (id: string, x: number): PlanZone => ({
  id,
  name: id,
  medium: 'crayon-3',
  polygonMm: [
    [x, 0],
    [x + 10, 0],
    [x + 10, 50],
    [x, 50],
  ],
});
const strengths = new Map<string, EtchStrength>([
  ['reeds', 'light'],
  ['post', 'dark'],
  ['bank', 'dark'],
]);

test('zones as far apart as the guard are not near, a hair nearer they are; the stronger is kept out of the weaker', () => {
  const guardMm = 5;
  expect(closeNeighbours([strip('reeds', 0), strip('post', 15)], strengths, guardMm)).toEqual([]);
  expect(closeNeighbours([strip('reeds', 0), strip('post', 14.5)], strengths, guardMm)).toEqual([
    { a: 'reeds', b: 'post', gapMm: 4.5, why: 'post takes the stronger etch: keep it out of reeds' },
  ]);
});

test('zones of one strength or without a rule are no neighbours; the nearest pair comes first, each pair once', () => {
  const near = closeNeighbours(
    [strip('bank', 0), strip('reeds', 13), strip('post', 24), strip('post', 27), strip('unknown', 38)],
    strengths,
    5,
  );
  expect(near.map(({ a, b, gapMm }) => [a, b, gapMm])).toEqual([
    ['reeds', 'post', 1],
    ['bank', 'reeds', 3],
  ]);
});
