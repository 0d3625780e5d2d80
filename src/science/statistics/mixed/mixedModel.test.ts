import { describe, expect, it } from 'vitest';
import { fisherAbove } from '../distributions.ts';
import { contrastCovariance, contrastOf, jointTest } from './contrastTest.ts';
import { estimableBy, independentColumns, setsOf } from './estimable.ts';
import { rankOf } from './rankOf.ts';
import { fitVarianceComponents } from './varianceComponents.ts';

/** Three groups of three: means 2, 6 and 10; mean squares 48 between on 2, 3 within on 6, by hand. */
const readings = [1, 2, 3, 4, 6, 8, 8, 10, 12];
const group = [0, 0, 0, 1, 1, 1, 2, 2, 2];
const digits = 9;

describe('a mixed model of balanced groups is the classical analysis of variance', () => {
  it('groups by chance: their variance, the mean, its error and its degrees of freedom', () => {
    const fit = fitVarianceComponents(
      readings.map(() => [1]),
      readings,
      [group],
    )!;
    expect(fit.variances[0]).toBeCloseTo((48 - 3) / 3, digits);
    expect(fit.variances[1]).toBeCloseTo(3, digits);
    const mean = contrastOf(fit, [1]);
    expect(mean.value).toBeCloseTo(6, digits);
    expect(mean.standardError).toBeCloseTo(Math.sqrt(48 / 9), digits);
    expect(mean.degreesOfFreedom).toBeCloseTo(2, 6);
    expect(contrastOf(fit, [1], 1.5).degreesOfFreedom).toBe(1.5);
    expect(contrastCovariance(fit, [1], [2])).toBeCloseTo((2 * 48) / 9, digits);
  });

  it('groups that were chosen: F of between over within', () => {
    const fit = fitVarianceComponents(
      group.map((one) => [1, one === 1 ? 1 : 0, one === 2 ? 1 : 0]),
      readings,
      [],
    )!;
    const weights = [
      [0, 1, 0],
      [0, 0, 1],
    ];
    const test = jointTest(fit, weights);
    expect(test.df).toBe(2);
    expect(test.denDf).toBeCloseTo(6, 6);
    expect(test.f).toBeCloseTo(16, digits);
    expect(test.p).toBeCloseTo(fisherAbove(16, 2, 6), digits);
    const difference = contrastOf(fit, [0, 1, -1]);
    expect(difference.value).toBeCloseTo(-4, digits);
    expect(difference.standardError).toBeCloseTo(Math.sqrt((2 * 3) / 3), digits);
  });

  it('groups that differ less than chance would have it get a variance below 0, as the mean squares say', () => {
    // Means 2, 2 and 2.5; mean squares ¼ between and 1 within.
    const alike = [1, 2, 3, 1, 2, 3, 1.5, 2.5, 3.5];
    const fit = fitVarianceComponents(
      alike.map(() => [1]),
      alike,
      [group],
    )!;
    expect(fit.variances[0]).toBeCloseTo((1 / 4 - 1) / 3, digits);
    expect(fit.variances[1]).toBeCloseTo(1, digits);
  });

  it('gives nothing where nothing scatters, or a column says again what another did', () => {
    expect(
      fitVarianceComponents(
        readings.map(() => [1]),
        readings.map(() => 5),
        [group],
      ),
    ).toBeNull();
    expect(
      fitVarianceComponents(
        readings.map(() => [1, 2]),
        readings,
        [group],
      ),
    ).toBeNull();
  });
});

describe('what a design can tell', () => {
  // The mean and all three groups: one column too many.
  const rows = group.map((one) => [1, one === 0 ? 1 : 0, one === 1 ? 1 : 0, one === 2 ? 1 : 0]);

  it('differences of groups, but no group by itself', () => {
    expect(rankOf(rows)).toBe(3);
    expect(independentColumns(rows)).toEqual([0, 1, 2]);
    const estimable = estimableBy(rows);
    expect(estimable([0, 1, -1, 0])).toBe(true);
    expect(estimable([1, 1 / 3, 1 / 3, 1 / 3])).toBe(true);
    expect(estimable([0, 1, 0, 0])).toBe(false);
    expect(estimable([0, 1, 1, 0])).toBe(false);
  });

  it('sets of what is alike, in the order they were met', () => {
    expect(setsOf([1, 4, 2, 7, 5], (one, other) => one % 3 === other % 3)).toEqual([
      [1, 4, 7],
      [2, 5],
    ]);
  });
});
