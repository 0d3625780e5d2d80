import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { frequencyMultiplier } from '../../src/science/lifting/frequencyMultiplier.ts';
import {
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  estimatedHorizontalCm,
  horizontalMultiplier,
  recommendedLimitKg,
  verticalMultiplier,
} from '../../src/science/lifting/liftingEquation.ts';
import { eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('lifting.json');
const numbers = (row: Row) => row.inputs as Record<string, number>;
const kgPerPound = 0.45359237;
const durations = { le_1h: '1h', gt_1h_le_2h: '2h', gt_2h_le_8h: '8h' } as const;
/** A printed half is rounded up from a double that may lie a last bit off it. */
const lastBit = 1e-12;

describe('multipliers, NIOSH 94-110', () => {
  const each: readonly (readonly [RegExp, number, string, (value: number) => number])[] = [
    [/^(bound-)?hm-/, 7, 'h_cm', horizontalMultiplier],
    [/^(bound-)?vm-/, 9, 'v_cm', verticalMultiplier],
    [/^(bound-)?dm-/, 8, 'd_cm', distanceMultiplier],
    [/^(bound-)?am-/, 11, 'a_deg', asymmetryMultiplier],
  ];
  for (const [pattern, least, input, multiplier] of each)
    eachRow(rows, pattern, least, (row) => {
      near(row, multiplier(numbers(row)[input]!), row.expected as number, row.tolerance.absolute! + lastBit);
      const { exact } = row as Row & { exact?: number };
      if (exact !== undefined) expect(multiplier(numbers(row)[input]!)).toBeCloseTo(exact, 4);
    });
  eachRow(rows, /^cm-/, 3, (row) => {
    const coupling = row.id.slice(3) as 'good' | 'fair' | 'poor';
    const [below, above] = row.expected as [number, number];
    expect([couplingMultiplier(coupling, 74.9), couplingMultiplier(coupling, 75)]).toEqual([below, above]);
  });
  test('where the method does not reach, nothing may be lifted', () => {
    expect([horizontalMultiplier(63), horizontalMultiplier(63.1)]).toEqual([25 / 63, 0]);
    expect([verticalMultiplier(0), verticalMultiplier(-0.1), verticalMultiplier(175.1)]).toEqual([
      1 - 0.225,
      0,
      0,
    ]);
    expect([distanceMultiplier(25), distanceMultiplier(10), distanceMultiplier(175.1)]).toEqual([1, 1, 0]);
    expect([asymmetryMultiplier(0), asymmetryMultiplier(135.1)]).toEqual([1, 0]);
  });
  eachRow(rows, /^h-estimate-/, 3, (row) => {
    expect(estimatedHorizontalCm(numbers(row).w_cm!, numbers(row).v_cm!)).toBe(row.expected);
  });
});

describe('frequency', () => {
  test('every cell of Table 5', () => {
    const text = readFileSync(new URL('data/niosh_fm.csv', import.meta.url), 'utf8').trim();
    const cells = text
      .split(/\r?\n/)
      .slice(1)
      .map((line) => line.split(',') as [string, keyof typeof durations, string, string]);
    expect(cells).toHaveLength(108);
    for (const [rate, duration, band, printed] of cells) {
      const found = frequencyMultiplier(
        rate === 'gt_15' ? 15.1 : Number(rate),
        durations[duration],
        band === 'lt_75cm' ? 74 : 75,
      );
      expect(found, `${rate} ${duration} ${band}`).toBe(Number(printed));
    }
  });
  eachRow(rows, /^fm-interp-/, 1, (row) => {
    near(row, frequencyMultiplier(numbers(row).lifts_per_min!, '1h', 50), row.expected as number);
  });
  eachRow(rows, /^fm-below-/, 1, (row) => {
    const seldom = frequencyMultiplier(numbers(row).lifts_per_min!, '8h', 50);
    expect(seldom).toBe(frequencyMultiplier(row.expected as number, '8h', 50));
  });
});

describe('recommended weight limit', () => {
  eachRow(rows, /^(rwl-|li-stone|example-ccohs-frequency-formula)/, 6, (row) => {
    const { h_cm, v_cm, d_cm, a_deg, fm, cm, load_kg } = numbers(row);
    const limit = recommendedLimitKg({
      horizontal: horizontalMultiplier(h_cm!),
      vertical: verticalMultiplier(v_cm!),
      distance: distanceMultiplier(d_cm!),
      asymmetry: asymmetryMultiplier(a_deg!),
      frequency: fm!,
      coupling: cm!,
    });
    if (typeof row.expected === 'number') return near(row, limit, row.expected);
    const expected = row.expected as { rwl_kg: number; li: number };
    near(row, limit, expected.rwl_kg);
    near(row, load_kg! / limit, expected.li);
  });
  eachRow(rows, /^example-(ccohs-frequency|anchor-11_39|niosh-4-(origin|destination))$/, 4, (row) => {
    const { hm, vm, dm, am, fm, cm, lc_lb } = numbers(row);
    const limit = recommendedLimitKg({
      horizontal: hm!,
      vertical: vm!,
      distance: dm!,
      asymmetry: am!,
      frequency: fm!,
      coupling: cm!,
    });
    const expected = row.expected as number | { rwl_kg?: number; worksheet_lb?: number };
    if (typeof expected === 'number') near(row, limit, expected);
    else if (expected.rwl_kg !== undefined) near(row, limit, expected.rwl_kg);
    // 51 lb and 23 kg are each other's rounded twins.
    else near(row, (limit / 23) * lc_lb!, expected.worksheet_lb!);
  });
  eachRow(rows, /^lc$/, 1, (row) => {
    const best = { horizontal: 1, vertical: 1, distance: 1, asymmetry: 1, frequency: 1, coupling: 1 };
    near(row, recommendedLimitKg(best), row.expected as number);
    expect(Math.round((row.expected as number) / kgPerPound)).toBe(51);
  });
});
