import { describe, expect, test } from 'vitest';
import { studentQuantile } from '../../src/science/statistics/distributions.ts';
import {
  clopperPearson,
  leastShare,
  scoreInterval,
  upperBoundOfNone,
  wilson,
} from '../../src/science/statistics/proportionInterval.ts';
import { eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('intervals.json');
/** The exact columns of the t table print 10 significant digits. */
const exactStudent = 1e-8;

type Pair = readonly [number, number];

function bothEnds(row: Row, found: { low: number; high: number }, expected: Pair, tolerance?: number): void {
  near(row, found.low, expected[0], tolerance);
  near(row, found.high, expected[1], tolerance);
}

describe('shares, Clopper & Pearson 1934 and Wilson 1927', () => {
  eachRow(rows, /^binom-/, 17, (row) => {
    const { k, n, level } = row.inputs as Record<string, number>;
    const expected = row.expected as Record<'clopper_pearson' | 'wilson', Pair>;
    bothEnds(row, clopperPearson(k!, n!, level!), expected.clopper_pearson);
    bothEnds(row, wilson(k!, n!, level!), expected.wilson);
    bothEnds(row, scoreInterval(k!, n!, level!), expected.wilson);
    // One side alone gives all that may be amiss to that side.
    near(row, leastShare(k!, n!, 1 - (1 - level!) / 2), expected.clopper_pearson[0]);
    // Counting the misses instead turns the interval over.
    const turned = ([low, high]: Pair): Pair => [1 - high, 1 - low];
    bothEnds(row, clopperPearson(n! - k!, n!, level!), turned(expected.clopper_pearson));
    bothEnds(row, wilson(n! - k!, n!, level!), turned(expected.wilson));
  });
  eachRow(rows, /^newcombe-/, 4, (row) => {
    const { k, n, level } = row.inputs as Record<string, number>;
    const expected = row.expected as Record<string, Pair>;
    bothEnds(row, clopperPearson(k!, n!, level!), expected.clopper_pearson_printed!);
    bothEnds(row, wilson(k!, n!, level!), expected.wilson_printed!);
    bothEnds(row, clopperPearson(k!, n!, level!), expected.clopper_pearson!, 1e-8);
    bothEnds(row, wilson(k!, n!, level!), expected.wilson!, 1e-8);
  });
  test('counts that cannot be give NaN', () => {
    for (const [hits, trials] of [
      [1, 0],
      [4, 3],
      [-1, 3],
      [0.5, 3],
    ] as const) {
      expect(clopperPearson(hits, trials, 0.95).low).toBeNaN();
      expect(wilson(hits, trials, 0.95).high).toBeNaN();
      expect(leastShare(hits, trials, 0.95)).toBeNaN();
    }
  });
});

describe('none of n', () => {
  eachRow(rows, /^zero-of-/, 8, (row) => {
    const { n, level } = row.inputs as Record<string, number>;
    near(row, upperBoundOfNone(n!, level!), row.expected as number);
  });
  test('59 clean of 59 is the least that shows 95 % good with 95 % confidence', () => {
    expect(upperBoundOfNone(59, 0.95)).toBeLessThan(0.05);
    expect(upperBoundOfNone(58, 0.95)).toBeGreaterThan(0.05);
    expect(upperBoundOfNone(0, 0.95)).toBeNaN();
  });
});

describe('Student t, NIST/SEMATECH 1.3.6.7.2', () => {
  eachRow(rows, /^t-df-/, 19, (row) => {
    const df = row.inputs.df === 'infinite' ? Number.POSITIVE_INFINITY : (row.inputs.df as number);
    const expected = row.expected as { printed: number[]; exact: number[] };
    for (const [i, probability] of (row.inputs.cumulative_p as number[]).entries()) {
      const found = studentQuantile(probability, df);
      near(row, found, expected.printed[i]!);
      near(row, found, expected.exact[i]!, exactStudent * Math.max(1, expected.exact[i]! / 10));
      near(row, studentQuantile(1 - probability, df), -expected.exact[i]!, 1e-6);
    }
  });
});
