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
  eachRow(rows, /^rule-false-alarm-3sigma$/, 1, (row) => {
    const expected = row.expected as { p: number; arl: number };
    near(row, 2 * normalUpperTail(3), expected.p);
    near(row, 1 / (2 * normalUpperTail(3)), expected.arl, 1e-6);
  });
});
