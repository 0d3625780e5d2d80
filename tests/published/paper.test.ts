import { describe, expect } from 'vitest';
import type { SheetMm } from '../../src/records/edition.ts';
import { dampGrowth, growthMm } from '../../src/studio/editions/dampGrowth.ts';
import { isoSheetMm, isoToleranceMm } from '../../src/studio/editions/isoPaper.ts';
import { grammageOf, sheetGrams } from '../../src/studio/editions/sheetMass.ts';
import { tearDown } from '../../src/studio/editions/tearDown.ts';
import { inkForPulls } from '../../src/studio/ink/inkMix.ts';
import { allNear, eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('paper.json');
const numbers = (row: Row) => row.inputs as Record<string, number>;
const sizeOf = (row: Row): SheetMm => [numbers(row).width_mm!, numbers(row).height_mm!];

describe('ISO 216', () => {
  eachRow(rows, /^iso216-[AB]\d/, 22, (row) => {
    const { series, n } = row.inputs as { series: 'A' | 'B'; n: number };
    allNear(row, isoSheetMm(series, n), row.expected as number[]);
  });
  eachRow(rows, /^iso216-tolerance-/, 3, (row) => {
    const sides = { 150: [1, 150], 600: [151, 600], big: [601, 1189] };
    const name = row.id.slice('iso216-tolerance-'.length) as unknown as keyof typeof sides;
    for (const side of sides[name]) near(row, isoToleranceMm(side), row.expected as number);
  });
});

describe('mass, ISO 536', () => {
  eachRow(rows, /^sheet-mass-/, 8, (row) => {
    near(row, sheetGrams(sizeOf(row), numbers(row).grammage!), row.expected as number);
  });
  eachRow(rows, /^stack-mass-/, 2, (row) => {
    const { sheets, grammage } = numbers(row);
    near(row, (sheets! * sheetGrams(sizeOf(row), grammage!)) / 1000, row.expected as number);
  });
  eachRow(rows, /^grammage-from-mass-/, 2, (row) => {
    near(row, grammageOf(sizeOf(row), numbers(row).mass_g!), row.expected as number);
  });
});

describe('damp paper', () => {
  eachRow(rows, /^damp-shift-/, 4, (row) => {
    near(row, growthMm(numbers(row).length_mm!, numbers(row).percent!), row.expected as number);
  });
  eachRow(rows, /^damp-expansion-max$/, 1, (row) => {
    const across = dampGrowth([400, 300], 'long').short;
    near(row, (across.high / 300) * 100, row.expected as number);
  });
});

describe('tearing down', () => {
  const torn = (row: Row, pieceGrain: 'long' | 'short' | 'any', turned = false) => {
    const { sheet, piece, loss = 0 } = row.inputs as { sheet: SheetMm; piece: SheetMm; loss?: number };
    const round = ([one, other]: SheetMm): SheetMm => (turned ? [other, one] : [one, other]);
    return tearDown(
      { sheetMm: round(sheet), pieceMm: round(piece), sheetGrain: 'long', pieceGrain, tearLossMm: loss },
      1,
    );
  };
  eachRow(rows, /^tear-(in|cm)-/, 15, (row) => {
    const expected = row.expected as Record<string, number>;
    for (const turned of [false, true]) {
      near(row, torn(row, 'long', turned).pieces.length, expected.grain_along_piece_long!);
      near(row, torn(row, 'short', turned).pieces.length, expected.grain_along_piece_short!);
      near(row, torn(row, 'any', turned).pieces.length, expected.best_any_grain!);
      near(row, 100 * torn(row, 'any', turned).used, expected.used_percent!);
    }
  });
  eachRow(rows, /^tear-loss-/, 3, (row) => {
    const expected = row.expected as Record<string, number>;
    near(row, torn(row, 'long').pieces.length, expected.grain_along_piece_long!);
    near(row, torn(row, 'short').pieces.length, expected.grain_along_piece_short!);
  });
});

describe('ink on paper', () => {
  eachRow(rows, /^ink-mass-run-/, 3, (row) => {
    const { area_cm2, coverage_percent, film_g_m2, pulls } = numbers(row);
    // without the charge, the range runs from 1 to 2 g/m², so the row's film lies between its ends
    const { low, high } = inkForPulls(area_cm2! * coverage_percent!, pulls!);
    const none = inkForPulls(0, 0);
    const carried = (low - none.low) * (2 - film_g_m2!) + (high - none.high) * (film_g_m2! - 1);
    near(row, carried, row.expected as number);
    expect(none.low).toBeGreaterThan(0);
  });
});
