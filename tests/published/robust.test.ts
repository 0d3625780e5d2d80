import { describe, expect, test } from 'vitest';
import { huberLocation, huberProposal2 } from '../../src/science/statistics/huberLocation.ts';
import { isotonic } from '../../src/science/statistics/isotonic.ts';
import { leastSquares } from '../../src/science/statistics/leastSquares.ts';
import { knotSlopes, monotoneCubic } from '../../src/science/statistics/monotoneCubic.ts';
import { madFactor, median, medianAbsoluteDeviation } from '../../src/science/statistics/quantile.ts';
import { theilSen } from '../../src/science/statistics/theilSen.ts';
import { allNear, eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('robust.json');
const rowOf = (id: string) => rows.find((row) => row.id === id)!;
const numbers = (row: Row, name: string) => row.inputs[name] as number[];
/** The rows print 12 digits. */
const printed = 1e-11;

describe('median absolute deviation', () => {
  test('mad-constant', () => {
    const row = rowOf('mad-constant');
    const expected = row.expected as { exact: number; printed: number };
    near(row, madFactor, expected.exact);
    near(row, madFactor, expected.printed, 5e-5);
  });
  eachRow(rows, /^mad-small-/, 2, (row) => {
    const expected = row.expected as Record<string, number>;
    const spread = medianAbsoluteDeviation(numbers(row, 'x'));
    near(row, median(numbers(row, 'x')), expected.median!);
    near(row, spread, expected.mad_exact_factor!);
    near(row, spread / madFactor, expected.mad_raw!);
    // Others print it with the factor cut to 1.4826: not the same number, but near.
    near(row, (spread / madFactor) * 1.4826, expected['mad_1.4826']!);
    expect(spread).not.toBe(expected['mad_1.4826']);
  });
  test('mad-copper-flour, with Huber’s location and proposal 2', () => {
    const row = rowOf('mad-copper-flour');
    const expected = row.expected as Record<string, number>;
    const x = numbers(row, 'x');
    near(row, median(x), expected.median!);
    near(row, (medianAbsoluteDeviation(x) / madFactor) * 1.4826, expected['mad_1.4826']!);
    // The row allows 1e-5 for the stopping rule.
    near(row, huberLocation(x), expected['huber_k1.5_location']!, 1e-5);
    near(row, huberProposal2(x).location, expected.huber_proposal2_location!, 1e-5);
    near(row, huberProposal2(x).scale, expected.huber_proposal2_scale!, 1e-5);
  });
  test('values that are mostly equal have no spread', () => {
    expect(huberLocation([3, 3, 3, 3, 900])).toBe(3);
    expect(huberProposal2([3, 3, 3, 3, 900])).toEqual({ location: 3, scale: 0 });
    expect(huberLocation([])).toBeNaN();
    expect(huberProposal2([1]).location).toBeNaN();
  });
});

describe('Theil–Sen', () => {
  eachRow(rows, /^theil-sen-/, 2, (row) => {
    const expected = row.expected as Record<string, number>;
    const x = numbers(row, 'x');
    const y = numbers(row, 'y');
    const { slope, intercept } = theilSen(x, y);
    near(row, slope, expected.slope!);
    near(row, intercept, expected.intercept_median_of_residuals!);
    const other = median(y) - slope * median(x);
    near(row, other, expected.intercept_median_y_minus_slope_median_x!);
    expect(Math.abs(other - intercept)).toBeGreaterThan(0.001);
  });
  test('one wild point turns the least-squares line and not this one', () => {
    const row = rowOf('theil-sen-outlier');
    const expected = row.expected as Record<string, number>;
    const x = numbers(row, 'x');
    const line = leastSquares(
      x.map((at) => [1, at]),
      numbers(row, 'y'),
      null,
    )!;
    near(row, line[0]!, expected.least_squares_intercept!);
    near(row, line[1]!, expected.least_squares_slope!);
  });
  test('equal abscissae have no slope', () => expect(theilSen([2, 2], [0, 1]).slope).toBeNaN());
});

describe('isotonic regression', () => {
  eachRow(rows, /^pava-/, 6, (row) => {
    const y = numbers(row, 'y');
    const weights = numbers(row, 'weights');
    allNear(row, isotonic(y, weights), row.expected as number[]);
    if (weights.every((weight) => weight === 1)) expect(isotonic(y, null)).toEqual(isotonic(y, weights));
  });
});

describe('monotone cubics on the RPN 15A data', () => {
  for (const [id, rule] of [
    ['pchip-rpn15a', 'harmonic'],
    ['monoh-fc-rpn15a', 'circle'],
  ] as const) {
    test(id, () => {
      const row = rowOf(id);
      const expected = row.expected as { slopes?: number[]; values: number[] };
      const curve = monotoneCubic(numbers(row, 'x'), numbers(row, 'f'), rule);
      allNear(row, numbers(row, 'at').map(curve), expected.values);
      for (const [i, at] of numbers(row, 'x').entries()) near(row, curve(at), numbers(row, 'f')[i]!, printed);
      if (expected.slopes)
        allNear(row, knotSlopes(numbers(row, 'x'), numbers(row, 'f'), rule), expected.slopes);
    });
  }
  test('the two rules differ between knots', () => {
    const row = rowOf('pchip-rpn15a');
    const at = 8.45;
    const curves = (['harmonic', 'circle'] as const).map((rule) =>
      monotoneCubic(numbers(row, 'x'), numbers(row, 'f'), rule)(at),
    );
    expect(Math.abs(curves[0]! - curves[1]!)).toBeGreaterThan(0.004);
  });
  test('the first abscissa is 7.99: with the misprint 7.09 the published values do not come out', () => {
    const row = rowOf('pchip-rpn15a');
    const curve = monotoneCubic([7.09, ...numbers(row, 'x').slice(1)], numbers(row, 'f'));
    expect(Math.abs(curve(8) - (row.expected as { values: number[] }).values[0]!)).toBeGreaterThan(1e-6);
  });
  test('neither leaves the range of the data, where a natural spline reaches 1.10', () => {
    const row = rowOf('cubic-overshoot-rpn15a');
    expect((row.expected as { max: number }).max).toBeGreaterThan(1.1);
    for (const rule of ['harmonic', 'circle'] as const) {
      const curve = monotoneCubic(numbers(row, 'x'), numbers(row, 'f'), rule);
      const values = Array.from({ length: 2000 }, (_, i) => curve(7.99 + (i / 1999) * 12.01));
      for (const [i, value] of values.entries())
        if (i > 0) expect(value).toBeGreaterThanOrEqual(values[i - 1]!);
    }
  });
});
