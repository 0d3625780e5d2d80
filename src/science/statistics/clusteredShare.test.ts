import { expect, it } from 'vitest';
import { effectiveCount, intraclassCorrelation } from './clusteredShare.ts';

const clusters = (...counts: readonly (readonly [hits: number, trials: number])[]) =>
  counts.map(([hits, trials]) => ({ hits, trials }));

it('likeness within clusters: all or none, by halves, and an example worked out by hand', () => {
  expect(intraclassCorrelation([clusters([2, 2], [0, 2])])).toBe(1);
  expect(intraclassCorrelation([clusters([1, 2], [1, 2])])).toBe(0);
  // Mean squares ½ between and ¼ within, four readings each: (½ − ¼) / (½ + 3 · ¼).
  expect(intraclassCorrelation([clusters([3, 4], [1, 4])])).toBeCloseTo(0.2, 12);
  // Clusters without readings say nothing, and groups may differ in their share.
  const twice = [clusters([3, 4], [1, 4], [0, 0]), clusters([3, 4], [1, 4])];
  expect(intraclassCorrelation(twice)).toBeCloseTo(0.2, 12);
  // Unlike sizes: mean squares ⅓ between and ¼ within, 8/3 readings a cluster by their squares.
  expect(intraclassCorrelation([clusters([2, 2], [2, 4])])).toBeCloseTo(1 / 9, 12);
});

it('likeness is not known from one cluster, from single readings, or where all are the same', () => {
  expect(intraclassCorrelation([clusters([3, 4])])).toBeNull();
  expect(intraclassCorrelation([clusters([1, 1], [0, 1])])).toBeNull();
  expect(intraclassCorrelation([clusters([4, 4], [4, 4])])).toBeNull();
});

it('clustered readings are worth between the clusters and the readings, and weigh by it', () => {
  const fives = clusters([5, 5], [4, 5], [0, 5], [1, 5]);
  expect(effectiveCount(fives, 0)).toEqual({ counted: 20, hits: 10 });
  expect(effectiveCount(fives, 1)).toEqual({ counted: 4, hits: 2 });
  // Kish's design effect of equal clusters: 1 + (5 − 1) · ¼ = 2.
  expect(effectiveCount(fives, 0.25)).toEqual({ counted: 10, hits: 5 });
  const unlike = effectiveCount(clusters([6, 6], [0, 1], [0, 0]), 0.2);
  expect(unlike.counted).toBeCloseTo(4, 12);
  expect(unlike.hits).toBeCloseTo(3, 12);
});
