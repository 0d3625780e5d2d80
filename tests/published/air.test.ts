import { describe, expect, test } from 'vitest';
import { clearanceMinutes } from '../../src/science/air/clearance.ts';
import {
  fallMinutes,
  roomAir,
  settlingSpeed,
  slipCorrection,
  stokesSpeed,
} from '../../src/science/air/settling.ts';
import {
  mgPerM3OfPpm,
  molarLitres,
  ppmOfMgPerM3,
  steadySourceMgPerM3,
} from '../../src/science/air/vapour.ts';
import { eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('air.json');
const numbers = (row: Row) => row.inputs as Record<string, number>;
const within = (row: Row, found: number, expected = row.expected as number) =>
  near(row, found, expected, row.tolerance.absolute ?? expected * row.tolerance.relative!);

describe('minutes until the air has cleared, CDC 2003 Table B.1 and MMWR 1994', () => {
  eachRow(rows, /^ach-/, 80, (row) => {
    const { air_changes_per_hour, efficiency_percent, mixing_factor } = numbers(row);
    within(row, clearanceMinutes(air_changes_per_hour!, efficiency_percent! / 100, mixing_factor));
  });
  test('nothing clears without fresh air, and never wholly', () => {
    for (const [changes, removal, mixing] of [
      [0, 0.99, 1],
      [6, 1, 1],
      [6, 0, 1],
      [6, 0.99, 0.5],
    ] as const)
      expect(clearanceMinutes(changes, removal, mixing)).toBeNaN();
  });
});

describe('settling in still air', () => {
  eachRow(rows, /^slip-(?!0_1$)/, 10, (row) => {
    const { diameter_um, mean_free_path_um } = numbers(row);
    within(row, slipCorrection(diameter_um!, mean_free_path_um));
  });
  // The table prints 2.85 by other constants; nothing that is dusted is so small.
  eachRow(rows, /^slip-0_1$/, 1, (row) => {
    expect(slipCorrection(0.1)).toBeCloseTo((row as Row & { formula: number }).formula, 4);
    expect(settlingSpeed(0.1, 1)).toBeNaN();
  });
  eachRow(rows, /^settle-(1|1_07|2_7)-\d+$/, 18, (row) => {
    const { diameter_um, density } = numbers(row);
    within(row, stokesSpeed(diameter_um!, density!));
    // The wake slows what is large only.
    expect(settlingSpeed(diameter_um!, density!)).toBeLessThanOrEqual(stokesSpeed(diameter_um!, density!));
  });
  eachRow(rows, /^settle-(drag|who)-/, 3, (row) => {
    const { diameter_um, density } = numbers(row);
    within(row, settlingSpeed(diameter_um!, density!));
  });
  test('the speed that is found is the one whose drag holds the sphere, as Schiller and Naumann give it', () => {
    for (const micron of [0.2, 1, 5, 30, 100, 300, 1000])
      for (const density of [0.5, 1.07, 2.7]) {
        const speed = settlingSpeed(micron, density);
        const reynolds = (roomAir.densityKgPerM3 * speed * micron * 1e-8) / roomAir.viscosityPaS;
        expect((speed * (1 + 0.15 * reynolds ** 0.687)) / stokesSpeed(micron, density)).toBeCloseTo(1, 9);
      }
  });
  eachRow(rows, /^settle-sp-10$/, 1, (row) => {
    const { diameter_um, density, viscosity_g_cm_s, slip, g_cm_s2 } = numbers(row);
    // Printed for other air and another gravity: the same formula, scaled to them.
    const scaled =
      (stokesSpeed(diameter_um!, density!, slip!) * (roomAir.viscosityPaS * 10) * g_cm_s2!) /
      (viscosity_g_cm_s! * roomAir.gravity * 100);
    within(row, scaled * 3600);
  });
  eachRow(rows, /^fall-/, 6, (row) => {
    const { diameter_um, density, height_m } = numbers(row);
    within(row, fallMinutes(diameter_um!, density!, height_m!));
  });
  test('no size, no density, no height', () => {
    for (const [micron, density, metres] of [
      [0, 1, 1],
      [5, 0, 1],
      [5, 1, 0],
      [5000, 1, 1],
    ] as const)
      expect(fallMinutes(micron, density, metres)).toBeNaN();
  });
});

describe('vapour', () => {
  eachRow(rows, /^ppm-mg-/, 8, (row) => {
    const { ppm, molar_mass, molar_volume } = numbers(row);
    const found = mgPerM3OfPpm(ppm!, molar_mass!, molar_volume!);
    within(row, found);
    near(row, found, row.expected as number, 0.01);
    expect(ppmOfMgPerM3(found, molar_mass!, molar_volume!)).toBeCloseTo(ppm!, 9);
    expect(Object.values(molarLitres)).toContain(molar_volume);
  });
  eachRow(rows, /^mg-ppm-/, 1, (row) => {
    const { mg_m3, molar_mass, molar_volume } = numbers(row);
    within(row, ppmOfMgPerM3(mg_m3!, molar_mass!, molar_volume!));
  });
  eachRow(rows, /^stoddard-/, 3, (row) => {
    const { ppm, mg_m3, molar_volume } = numbers(row);
    // The mass of a mole that a printed pair of limits implies: what one mg/m³ more per g/mol gives back.
    within(row, mg_m3! / mgPerM3OfPpm(ppm!, 1, molar_volume!));
  });
  eachRow(rows, /^box-source-/, 3, (row) => {
    const { air_changes_per_hour, volume_m3, source_g_per_h, hours } = numbers(row);
    const expected = row.expected as { c_mg_m3: number; steady_mg_m3: number };
    const level = (time: number) =>
      steadySourceMgPerM3(source_g_per_h!, air_changes_per_hour!, volume_m3!, time);
    within(row, level(hours!), expected.c_mg_m3);
    within(row, level(Infinity), expected.steady_mg_m3);
  });
});
