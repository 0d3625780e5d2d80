import { describe, expect, test } from 'vitest';
import { fitProportionalOdds } from '../../src/science/statistics/ordinal/proportionalOdds.ts';
import { eachRow, near, publishedRows } from './rows.ts';

const rows = publishedRows('ordinal.json');

/** Dummies of influence, type and contact for the table's 72 cells, and their satisfaction. */
function cells(freq: readonly number[]) {
  const dummies = (levels: number, at: number) =>
    Array.from({ length: levels - 1 }, (_, k) => Number(at === k + 1));
  const regressors = freq.map((_, i) => [
    ...dummies(3, Math.floor(i / 3) % 3),
    ...dummies(4, Math.floor(i / 9) % 4),
    ...dummies(2, Math.floor(i / 36)),
  ]);
  return { regressors, categories: freq.map((_, i) => i % 3) };
}

describe('proportional odds, McCullagh 1980', () => {
  eachRow(rows, /^ordinal-housing/, 3, (row) => {
    const { freq, penalty = 0 } = row.inputs as { freq: number[]; penalty?: number };
    const expected = row.expected as Record<'coefficients' | 'thresholds', number[]> &
      Partial<{ standardErrors: number[]; deviance: number; minusPenalised: number }>;
    const { regressors, categories } = cells(freq);
    const ridge = expected.coefficients.map(() => penalty);
    const fit = fitProportionalOdds(regressors, categories, 3, ridge, freq)!;
    for (const [k, value] of expected.coefficients.entries()) near(row, fit.coefficients[k]!, value);
    for (const [k, value] of expected.thresholds.entries()) near(row, fit.thresholds[k]!, value);
    for (const [k, error] of (expected.standardErrors ?? []).entries())
      near(row, Math.sqrt(fit.covariance[k]![k]!), error, 1e-5);
    if (expected.deviance) near(row, -2 * fit.logLikelihood, expected.deviance, 1e-6);
    const size = fit.coefficients.reduce((sum, value) => sum + value * value, 0);
    if (expected.minusPenalised)
      near(row, -fit.logLikelihood + (penalty / 2) * size, expected.minusPenalised, 1e-6);
    // One line for each observation says the same as counts.
    const many = freq.flatMap((count, i) => Array.from({ length: count }, () => i));
    const spread = fitProportionalOdds(
      many.map((i) => regressors[i]!),
      many.map((i) => categories[i]!),
      3,
      ridge,
    )!;
    for (const [k, value] of fit.coefficients.entries()) near(row, spread.coefficients[k]!, value, 1e-8);
  });

  test('categories the other way round turn the signs', () => {
    const { freq } = rows[0]!.inputs as { freq: number[] };
    const { regressors, categories } = cells(freq);
    const free = regressors[0]!.map(() => 0);
    const one = fitProportionalOdds(regressors, categories, 3, free, freq)!;
    const turned = categories.map((category) => 2 - category);
    const other = fitProportionalOdds(regressors, turned, 3, free, freq)!;
    for (const [k, value] of one.coefficients.entries())
      expect(other.coefficients[k]!).toBeCloseTo(-value, 8);
  });

  test('a level where everything held has finite odds with a penalty and no answer without', () => {
    const x = [[0], [0], [0], [0], [1], [1], [1], [1]];
    const held = [0, 1, 2, 1, 2, 2, 2, 2];
    const separated = [0, 0, 1, 1, 2, 2, 2, 2];
    expect(fitProportionalOdds(x, separated, 3, [0])).toBeNull();
    const fit = fitProportionalOdds(x, held, 3, [0.25])!;
    expect(fit.coefficients[0]).toBeGreaterThan(1);
    expect(fit.coefficients[0]).toBeLessThan(10);
    expect(fitProportionalOdds(x, held.map(Math.sign), 3, [0.25])).toBeNull();
  });
});
