import { describe, expect, test } from 'vitest';
import { stoneMassKg } from '../../src/studio/stones/stoneMass.ts';
import { eachRow, near, publishedRows } from './rows.ts';

const rows = publishedRows('stone-mass.json');
const mmPerInch = 25.4;
const kgPerPound = 0.45359237;

describe('mass of a stone', () => {
  eachRow(rows, /^stone-\d/, 18, (row) => {
    const { length_cm, width_cm, thickness_cm, density } = row.inputs as Record<string, number>;
    for (const [widthCm, heightCm] of [
      [length_cm!, width_cm!],
      [width_cm!, length_cm!],
    ] as const) {
      const mass = stoneMassKg({
        widthMm: widthCm * 10,
        heightMm: heightCm * 10,
        cornerThicknessMm: [0, 1, 2, 3].map(() => thickness_cm! * 10) as [number, number, number, number],
        densityGPerCm3: density!,
      })!;
      near(row, mass.value, row.expected as number);
      expect([mass.low, mass.high]).toEqual([mass.value, mass.value]);
    }
  });
  eachRow(rows, /^stone-in-/, 3, (row) => {
    const { length_in, width_in, thickness_in, density } = row.inputs as Record<string, number>;
    const expected = row.expected as { kg: number; lb: number };
    const mass = stoneMassKg({
      widthMm: width_in! * mmPerInch,
      heightMm: length_in! * mmPerInch,
      cornerThicknessMm: [0, 1, 2, 3].map(() => thickness_in! * mmPerInch) as [
        number,
        number,
        number,
        number,
      ],
      densityGPerCm3: density!,
    })!;
    near(row, mass.value, expected.kg);
    near(row, mass.value / kgPerPound, expected.lb);
  });
  test('without a density of its own, between the densities that the trade quotes', () => {
    const row = rows.find(({ id }) => id === 'limestone-density-range')!;
    const litre = { widthMm: 100, heightMm: 100, cornerThicknessMm: [100, 100, 100, 100] as const };
    const mass = stoneMassKg({ ...litre, densityGPerCm3: null })!;
    expect([mass.low, mass.high]).toEqual(row.expected);
  });
});
