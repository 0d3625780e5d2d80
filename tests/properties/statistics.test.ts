import fc from 'fast-check';
import { expect } from 'vitest';
import { boundaryQuantile } from '../../src/science/statistics/boundaryQuantile.ts';
import {
  chiSquareQuantile,
  fisherQuantile,
  studentQuantile,
} from '../../src/science/statistics/distributions.ts';
import { huberLocation } from '../../src/science/statistics/huberLocation.ts';
import { isotonic } from '../../src/science/statistics/isotonic.ts';
import { monotoneCubic } from '../../src/science/statistics/monotoneCubic.ts';
import { clopperPearson, upperBoundOfNone, wilson } from '../../src/science/statistics/proportionInterval.ts';
import { median, quantile } from '../../src/science/statistics/quantile.ts';
import { theilSen } from '../../src/science/statistics/theilSen.ts';
import { close, holds } from './holds.ts';
import { millimetres as hundredths } from './shapes.ts';

const counts = fc
  .tuple(fc.integer({ min: 1, max: 200 }), fc.nat(200))
  .map(([trials, hits]) => ({ trials, hits: hits % (trials + 1) }));
const level = fc.constantFrom(0.8, 0.9, 0.95, 0.99);
const numbers = fc.array(hundredths(-100, 100), { minLength: 1, maxLength: 30 });

holds(
  'an interval of a share holds the share that was seen, lies in 0..1 and widens with its level',
  fc.property(counts, ({ trials, hits }) => {
    for (const interval of [clopperPearson, wilson]) {
      let before = { low: hits / trials, high: hits / trials };
      for (const wanted of [0.5, 0.8, 0.95, 0.999]) {
        const { low, high } = interval(hits, trials, wanted);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(before.low + 1e-12);
        expect(high).toBeGreaterThanOrEqual(before.high - 1e-12);
        before = { low, high };
      }
    }
  }),
);

holds(
  'hits and misses are each other’s mirror image, and ten times the sheets narrow the interval',
  fc.property(counts, level, ({ trials, hits }, wanted) => {
    for (const interval of [clopperPearson, wilson]) {
      const seen = interval(hits, trials, wanted);
      const missed = interval(trials - hits, trials, wanted);
      close(seen.low, 1 - missed.high, 1e-7);
      close(seen.high, 1 - missed.low, 1e-7);
      const more = interval(10 * hits, 10 * trials, wanted);
      expect(more.high - more.low).toBeLessThan(seen.high - seen.low);
    }
    close(upperBoundOfNone(trials, wanted), clopperPearson(0, trials, 2 * wanted - 1 || 1e-9).high, 1e-6);
  }),
);

holds(
  'Clopper and Pearson hold the truth at least as often as they say, whatever it is',
  fc.property(
    fc.integer({ min: 1, max: 40 }),
    fc.integer({ min: 1, max: 99 }),
    level,
    (trials, share, wanted) => {
      const truth = share / 100;
      let chance = (1 - truth) ** trials;
      let held = 0;
      for (let hits = 0; hits <= trials; hits++) {
        const { low, high } = clopperPearson(hits, trials, wanted);
        if (low <= truth && truth <= high) held += chance;
        chance *= ((trials - hits) / (hits + 1)) * (truth / (1 - truth));
      }
      expect(held).toBeGreaterThanOrEqual(wanted - 1e-9);
    },
  ),
  100,
);

holds(
  'Student’s quantiles are odd, rise with probability and fall with degrees of freedom',
  fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 51, max: 99 }), (df, hundredth) => {
    const probability = hundredth / 100;
    const at = studentQuantile(probability, df);
    close(studentQuantile(1 - probability, df), -at, 1e-6);
    expect(studentQuantile(probability + 0.005, df)).toBeGreaterThan(at);
    expect(studentQuantile(probability, df + 1)).toBeLessThanOrEqual(at + 1e-9);
  }),
);

holds(
  'middles lie between the ends and go along when everything is shifted or turned over',
  fc.property(numbers, hundredths(-50, 50), (values, by) => {
    for (const middle of [median, huberLocation]) {
      const centre = middle(values);
      expect(centre).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
      expect(centre).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
      close(middle(values.map((value) => value + by)), centre + by, 1e-5);
      close(middle(values.map((value) => -value)), -centre, 1e-5);
    }
    expect(quantile(values, 0.2)).toBeLessThanOrEqual(quantile(values, 0.8));
  }),
);

holds(
  'isotonic regression rises, keeps the mean, and leaves what already rises alone',
  fc.property(numbers, (values) => {
    const fitted = isotonic(values, null);
    for (const [i, value] of fitted.entries())
      if (i > 0) expect(value).toBeGreaterThanOrEqual(fitted[i - 1]!);
    const sum = (list: readonly number[]) => list.reduce((total, value) => total + value, 0);
    close(sum(fitted), sum(values), 1e-9);
    const again = isotonic(fitted, null);
    for (const [i, value] of fitted.entries()) close(again[i]!, value);
  }),
);

holds(
  'a monotone cubic goes through its knots and never leaves the range of the two beside it',
  fc.property(
    fc.array(fc.tuple(hundredths(1, 20), hundredths(0, 100)), { minLength: 2, maxLength: 12 }),
    (steps) => {
      let at = 0;
      const x = steps.map(([width]) => (at += width));
      const y = steps.map(([, value]) => value);
      for (const rule of ['harmonic', 'circle'] as const) {
        const curve = monotoneCubic(x, y, rule);
        for (const [i, knot] of x.entries()) {
          close(curve(knot), y[i]!, 1e-9);
          if (i === 0) continue;
          const [low, high] = [Math.min(y[i - 1]!, y[i]!), Math.max(y[i - 1]!, y[i]!)];
          for (let share = 0.1; share < 1; share += 0.2) {
            const value = curve(x[i - 1]! + share * (knot - x[i - 1]!));
            expect(value).toBeGreaterThanOrEqual(low - 1e-9);
            expect(value).toBeLessThanOrEqual(high + 1e-9);
          }
        }
      }
    },
  ),
);

holds(
  'a straight line is found again, whatever one wild point in seven says',
  fc.property(
    hundredths(-5, 5),
    hundredths(-50, 50),
    fc.integer({ min: 7, max: 20 }),
    (slope, intercept, count) => {
      const x = Array.from({ length: count }, (_, i) => i);
      const y = x.map((at) => intercept + slope * at);
      y[count >> 1] = 9999;
      const line = theilSen(x, y);
      close(line.slope, slope, 1e-9);
      close(line.intercept, intercept, 1e-9);
    },
  ),
);

const chance = fc.integer({ min: 1, max: 999 }).map((share) => share / 1000);

holds(
  'F is t squared with one degree of freedom above, its own reciprocal turned over, and chi-square over a known variance',
  fc.property(
    chance,
    fc.integer({ min: 1, max: 60 }),
    fc.integer({ min: 1, max: 60 }),
    (share, upper, lower) => {
      const t = studentQuantile((1 + share) / 2, lower);
      expect(fisherQuantile(share, 1, lower) / t ** 2).toBeCloseTo(1, 7);
      expect(fisherQuantile(share, upper, lower) * fisherQuantile(1 - share, lower, upper)).toBeCloseTo(1, 7);
      const known = chiSquareQuantile(share, upper) / upper;
      expect(fisherQuantile(share, upper, Infinity)).toBe(known);
      expect(fisherQuantile(share, upper, 1e8) / known).toBeCloseTo(1, 5);
    },
  ),
);

holds(
  'chi-square is the normal squared with one degree of freedom and exponential with two',
  fc.property(chance, (share) => {
    const z = studentQuantile((1 + share) / 2, Infinity);
    expect(chiSquareQuantile(share, 1) / z ** 2).toBeCloseTo(1, 9);
    expect(chiSquareQuantile(share, 2) / (-2 * Math.log1p(-share))).toBeCloseTo(1, 9);
  }),
);

holds(
  'a half-width that minds an edge lies between those of one and of two parameters, and narrows as the variance is known',
  fc.property(level, fc.integer({ min: 1, max: 60 }), (wanted, freedom) => {
    const found = boundaryQuantile(wanted, freedom);
    expect(found).toBeGreaterThan(studentQuantile((1 + wanted) / 2, freedom));
    expect(found).toBeLessThan(Math.sqrt(2 * fisherQuantile(wanted, 2, freedom)));
    expect(found).toBeGreaterThan(boundaryQuantile(wanted, Infinity));
    expect(boundaryQuantile(wanted, 1e7)).toBeCloseTo(boundaryQuantile(wanted, Infinity), 5);
  }),
);
