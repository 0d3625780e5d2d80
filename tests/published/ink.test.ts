import { describe, expect } from 'vitest';
import {
  blendingNumber,
  blendViscosity,
  logarithmicBlend,
  viscosityOfNumber,
} from '../../src/science/chemistry/viscosityBlend.ts';
import { inkGrams, mixedViscosity, modifierGrams, modifierPercent } from '../../src/studio/ink/inkMix.ts';
import { eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('ink.json');
const numbers = (row: Row) => row.inputs as Record<string, number>;
const partsOf = (row: Row) =>
  (row.inputs.components as { nu: number; fraction: number }[]).map(({ nu, fraction }) => ({
    viscosity: nu,
    share: fraction,
  }));

describe('blending rules', () => {
  eachRow(rows, /^refutas-formula$/, 1, (row) => {
    const { a, b, c } = row.expected as Record<string, number>;
    // ν + c = e gives a logarithm of a logarithm of 0, ν + c = e^e one of 1.
    expect(blendingNumber(Math.E - c!)).toBeCloseTo(b!, 9);
    expect(blendingNumber(Math.E ** Math.E - c!)).toBeCloseTo(a! + b!, 9);
  });
  eachRow(rows, /^refutas-vbn-/, 13, (row) => {
    near(row, blendingNumber(numbers(row).nu!), row.expected as number);
    expect(viscosityOfNumber(blendingNumber(numbers(row).nu!)) / numbers(row).nu!).toBeCloseTo(1, 9);
  });
  eachRow(rows, /^refutas-blend-/, 6, (row) => {
    const expected = row.expected as Record<'vbn' | 'nu' | 'log_mean', number>;
    const share = row.tolerance.relative!;
    const parts = partsOf(row);
    near(row, blendViscosity(parts), expected.nu, expected.nu * share);
    near(row, blendViscosity([...parts].reverse()), expected.nu, expected.nu * share);
    near(row, blendingNumber(blendViscosity(parts)), expected.vbn, expected.vbn * share);
    near(row, logarithmicBlend(parts), expected.log_mean, expected.log_mean * share);
  });
  eachRow(rows, /^logmix-/, 4, (row) => {
    const { soft_pa_s, stiff_pa_s, stiff_fraction } = numbers(row);
    const soft = 100 * (1 - stiff_fraction!);
    near(row, mixedViscosity(soft, soft_pa_s!, stiff_pa_s!), row.expected as number);
    near(row, mixedViscosity(100 - soft, stiff_pa_s!, soft_pa_s!), row.expected as number);
  });
});

describe('grams', () => {
  eachRow(rows, /^mix-mass-/, 5, (row) => {
    const { soft_percent, total_g } = numbers(row);
    const expected = row.expected as { soft_g: number; stiff_g: number };
    const found = inkGrams(soft_percent!, total_g!);
    near(row, found.softGrams, expected.soft_g);
    near(row, found.stiffGrams, expected.stiff_g);
  });
  eachRow(rows, /^modifier-\d/, 4, (row) => {
    const { modifier_g, ink_g } = numbers(row);
    const expected = row.expected as { on_ink: number; of_total: number };
    const found = modifierPercent(modifier_g!, ink_g!);
    near(row, found.onInk, expected.on_ink);
    near(row, found.ofWhole, expected.of_total);
    near(row, modifierGrams(found.onInk, ink_g! + modifier_g!), modifier_g!);
  });
  eachRow(rows, /^modifier-grams-/, 2, (row) => {
    const { percent_on_ink, total_g } = numbers(row);
    near(row, modifierGrams(percent_on_ink!, total_g!), row.expected as number);
  });
});
