import { expect, it } from 'vitest';
import { type EditionPull, editionDrift } from './drift.ts';

const pulls = (darks: readonly number[]): EditionPull[] =>
  darks.map((distance, i) => ({ n: i + 1, lights: null, middles: 0, darks: distance }));
const darksOf = (distances: readonly number[]) => editionDrift(pulls(distances))[2]!;

const quiet = [0.001, -0.002, 0.002, -0.001, 0, 0.002, -0.002, 0.001];

it('under eight pulls only distances', () => {
  const drift = darksOf(quiet.slice(0, 7));
  expect(drift.distances).toHaveLength(7);
  expect([drift.chart, drift.alarms]).toEqual([null, []]);
});

it('a quiet edition raises no alarm, an unread or unchanging tone neither', () => {
  expect(darksOf(quiet).chart!.mean).toBeCloseTo(0.000125, 9);
  expect(editionDrift(pulls(quiet)).map(({ alarms }) => alarms)).toEqual([[], [], []]);
});

it('darks up for six pulls: ease the charge', () => {
  const drift = darksOf([0, 0.002, -0.001, 0.001, 0.003, 0.005, 0.007, 0.009, 0.011]);
  expect(drift.alarms.map(({ n, words }) => [n, words])).toContainEqual([
    8,
    'darks up for six pulls: ease the charge.',
  ]);
});

it('a jump between two pulls is told at the later one, whatever the order given', () => {
  const far = [...quiet, 0.03];
  const alarms = editionDrift(pulls(far).reverse())[2]!.alarms;
  expect(alarms.find(({ rule }) => rule === 'range')).toMatchObject({ n: 9 });
  expect(alarms.find(({ rule }) => rule === 1)!.words).toBe(
    'darks far darker than this edition: ease the charge.',
  );
});
