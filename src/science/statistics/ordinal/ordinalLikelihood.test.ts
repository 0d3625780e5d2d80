import { expect, it } from 'vitest';
import { ordinalLikelihood } from './ordinalLikelihood.ts';

const data = {
  rows: [[0], [1], [1], [0.5]],
  categories: [0, 1, 2, 0],
  weights: [2, 1, 3, 0],
  penalty: [0.4],
  thresholds: 2,
};
const place = [-0.5, 1.2, 0.7];
const below = (at: number) => 1 / (1 + Math.exp(-at));

it('is the sum of the logarithms of each reading’s chance, by weight, less the ridge', () => {
  const at = ordinalLikelihood(data, place)!;
  const expected =
    2 * Math.log(below(-0.5)) +
    Math.log(below(1.2 - 0.7) - below(-0.5 - 0.7)) +
    3 * Math.log(1 - below(1.2 - 0.7));
  expect(at.logLikelihood).toBeCloseTo(expected, 12);
  expect(at.penalised).toBeCloseTo(expected - 0.5 * 0.4 * 0.7 ** 2, 12);
});

it('has the slope and the curvature that small steps show', () => {
  const at = ordinalLikelihood(data, place)!;
  const step = 1e-5;
  const moved = (k: number, by: number) =>
    ordinalLikelihood(
      data,
      place.map((value, i) => value + (i === k ? by : 0)),
    )!;
  for (const k of place.keys()) {
    const [up, down] = [moved(k, step), moved(k, -step)];
    expect(at.slope[k]).toBeCloseTo((up.penalised - down.penalised) / (2 * step), 7);
    for (const other of place.keys())
      expect(at.information[other]![k]).toBeCloseTo(-(up.slope[other]! - down.slope[other]!) / (2 * step), 7);
  }
});

it('is nothing where thresholds do not rise', () => {
  expect(ordinalLikelihood(data, [1, 1, 0])).toBeNull();
  expect(ordinalLikelihood(data, [2, 1, 0])).toBeNull();
});
