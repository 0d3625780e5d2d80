import { expect, it } from 'vitest';
import { type EditionPull, editionDrift } from './drift.ts';

const pulls = (darks: readonly number[]): EditionPull[] =>
  darks.map((distance, i) => ({ n: i + 1, lights: null, middles: 0, darks: distance }));
const darksOf = (distances: readonly number[]) => editionDrift(pulls(distances))[2]!;

const quiet = [0.001, -0.002, 0.002, -0.001, 0, 0.002, -0.002, 0.001];

it('under eight prints only distances', () => {
  const drift = darksOf(quiet.slice(0, 7));
  expect(drift.distances).toHaveLength(7);
  expect([drift.chart, drift.noticed]).toEqual([null, []]);
});

it('in a quiet edition nothing is noticed, in an unread or unchanging tone neither', () => {
  expect(darksOf(quiet).chart!.mean).toBeCloseTo(0.000125, 9);
  expect(editionDrift(pulls(quiet)).map(({ noticed }) => noticed)).toEqual([[], [], []]);
});

it('darks darker six times running: ease the charge', () => {
  const drift = darksOf([0, 0.002, -0.001, 0.001, 0.003, 0.005, 0.007, 0.009, 0.011]);
  expect(drift.noticed.map(({ n, words }) => [n, words])).toContainEqual([
    8,
    'Print 8: the darks came out darker six times running: ease the charge.',
  ]);
});

it('a jump between two prints is told at the later one, whatever the order given', () => {
  const far = [...quiet, 0.03];
  const { noticed } = editionDrift(pulls(far).reverse())[2]!;
  expect(noticed.find(({ rule }) => rule === 'range')).toMatchObject({ n: 9 });
  expect(noticed.find(({ rule }) => rule === 1)!.words).toBe(
    'Print 9: its darks are darker by more than these prints differ: ease the charge.',
  );
});
