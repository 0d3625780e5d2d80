import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { individualsChart, rangeOfTwo } from '../../src/science/statistics/individualsChart.ts';
import { normalUpperTail } from '../../src/science/statistics/normalTail.ts';
import { runRules } from '../../src/science/statistics/runRules.ts';
import { allNear, eachRow, near, publishedRows } from './rows.ts';

const rows = publishedRows('intervals.json');

describe('individuals and moving ranges', () => {
  test('the factors are those printed for two, and those computed round to them', () => {
    const text = readFileSync(new URL('data/control_chart_constants.csv', import.meta.url), 'utf8');
    const [names, two] = text.split(/\r?\n/).map((line) => line.split(',')) as [string[], string[]];
    const printed = (name: string) => Number(two[names.indexOf(name)]);
    expect(printed('n')).toBe(2);
    expect(rangeOfTwo).toEqual({ d2: printed('d2'), D4: printed('D4') });
    expect(printed('D3')).toBe(0);
    expect(2 / Math.sqrt(Math.PI)).toBeCloseTo(printed('d2_exact'), 8);
    expect(Math.abs(printed('D4_exact') - rangeOfTwo.D4)).toBeLessThan(0.0005);
  });
  eachRow(rows, /^imr-nist-flowrate$/, 1, (row) => {
    const expected = row.expected as Record<string, number> & { moving_ranges: number[] };
    const values = row.inputs.x as number[];
    const chart = individualsChart(values)!;
    near(row, chart.mean, expected.mean!);
    allNear(row, chart.movingRanges, expected.moving_ranges);
    near(row, chart.meanRange, expected.mr_bar!);
    near(row, chart.upper, expected.ucl!);
    near(row, chart.lower, expected.lcl!);
    near(row, chart.upper, expected['ucl_exact_d2_1.128']!, 1e-8);
    near(row, chart.lower, expected['lcl_exact_d2_1.128']!, 1e-8);
    // Read backwards, or turned over, the limits are the same, or turned over.
    expect(individualsChart([...values].reverse())!.upper).toBeCloseTo(chart.upper, 9);
    expect(individualsChart(values.map((value) => -value))!.lower).toBeCloseTo(-chart.upper, 9);
    expect(individualsChart([1])).toBeNull();
  });
});

describe('run rules, Nelson 1984', () => {
  eachRow(rows, /^rule-n\d$/, 8, (row) => {
    const scores = row.inputs.z as number[];
    const { all_rules_that_fire: fire } = row.expected as { all_rules_that_fire: Record<string, number[]> };
    const nelsons = Object.entries(fire).filter(([name]) => name.startsWith('N'));
    const wanted = nelsons.flatMap(([name, places]) => places.map((place) => `${name.slice(1)} at ${place}`));
    const found = (from: readonly number[]) => runRules(from).map(({ rule, at }) => `${rule} at ${at + 1}`);
    expect(found(scores)).toEqual(wanted);
    expect(found(scores.map((score) => -score))).toEqual(wanted);
  });
  test('what lies on a bound is not beyond it', () => {
    const fired = (...scores: readonly number[]) => [...new Set(runRules(scores).map(({ rule }) => rule))];
    const over = 1 + 1e-9;
    expect(fired(3)).toEqual([]);
    expect(fired(3 * over)).toEqual([1]);
    expect(fired(0.1, 0.2, 0.1, 0.2, 0, 0.2, 0.1, 0.2, 0.1)).toEqual([]);
    expect(fired(2, 0, 2)).toEqual([]);
    expect(fired(2 * over, 0, 2 * over)).toEqual([5]);
    expect(fired(1, -2, 1.5, 1.5, 1)).toEqual([]);
    expect(fired(1 * over, -2, 1.5, 1.5, 1 * over)).toEqual([6]);
    const fifteen = Array.from({ length: 15 }, (_, k) => [0.1, 0.1, -0.1, -0.1][k % 4]!);
    expect(fired(...fifteen)).toEqual([7]);
    expect(fired(...fifteen.with(7, 1))).toEqual([]);
    const eight = [1.1, 1.1, -1.1, -1.1, 1.1, 1.1, -1.1, -1.1];
    expect(fired(...eight)).toEqual([8]);
    expect(fired(...eight.with(3, -1))).toEqual([]);
  });
  eachRow(rows, /^rule-false-alarm-3sigma$/, 1, (row) => {
    const expected = row.expected as { p: number; arl: number };
    near(row, 2 * normalUpperTail(3), expected.p);
    near(row, 1 / (2 * normalUpperTail(3)), expected.arl, 1e-6);
  });
});
