import { describe, expect, test } from 'vitest';
import { apply3 } from '../../src/science/algebra/matrix3.ts';
import { densityOfReflectance, reflectanceOfDensity } from '../../src/science/colour/density.ts';
import { type Lab, labOfXyz, lightness, luminanceOfLightness } from '../../src/science/colour/lab.ts';
import { linearToSrgb, srgbToLinear } from '../../src/science/colour/srgbTransfer.ts';
import { reflectanceOfToneArea, toneArea } from '../../src/science/colour/toneArea.ts';
import {
  adaptation,
  d65,
  srgbToXyz,
  xyzOfChromaticity,
  xyzToSrgb,
} from '../../src/science/colour/tristimulus.ts';
import { allNear, eachRow, near, publishedRows, type Row } from './rows.ts';

const rows = publishedRows('colour.json');
const rowOf = (id: string) => rows.find((row) => row.id === id)!;
/** Codes are 0..255 in the rows, and a round trip may lose the last digits only. */
const roundTrip = 1e-12;

function linearOf(codes: readonly number[]): [number, number, number] {
  return codes.map((code) => srgbToLinear(code / 255)) as [number, number, number];
}

describe('sRGB, IEC 61966-2-1', () => {
  eachRow(rows, /^srgb-decode-/, 20, (row) => {
    const code = row.inputs.code as number;
    near(row, srgbToLinear(code / 255), row.expected as number);
    near(row, linearToSrgb(row.expected as number) * 255, code, 255e-9);
  });
  eachRow(rows, /^srgb-encode-/, 11, (row) => {
    near(row, linearToSrgb(row.inputs.linear as number), row.expected as number);
    near(row, srgbToLinear(row.expected as number), row.inputs.linear as number);
  });
  test('the two segments join to about 1e-8, and both sides are as published', () => {
    const row = rowOf('srgb-threshold');
    const sides = row.expected as Record<string, number>;
    near(row, srgbToLinear(0.04045), sides.decode_linear_side!);
    near(row, srgbToLinear(0.04045 + 1e-15), sides.decode_power_side!);
    near(row, linearToSrgb(0.0031308), sides.encode_linear_side!);
    near(row, linearToSrgb(0.0031308 + 1e-16), sides.encode_power_side!);
  });
  test('every 8-bit code comes back', () => {
    for (let code = 0; code < 256; code++)
      expect(Math.abs(linearToSrgb(srgbToLinear(code / 255)) * 255 - code)).toBeLessThan(255 * roundTrip);
  });
});

describe('whites and matrices', () => {
  test('d65-white-xy', () =>
    allNear(rowOf('d65-white-xy'), [...d65], rowOf('d65-white-xy').expected as number[]));
  test('the tabulated D65 is another white, and mixing the two leaves a tint of −0.014 in b*', () => {
    const tabulated = (rowOf('d65-white-cie15').expected as number[]).map((value) => value / 100);
    const white = labOfXyz(d65, tabulated as [number, number, number]);
    expect(white[1]).toBeCloseTo(-0.002, 3);
    expect(white[2]).toBeCloseTo(-0.014, 3);
  });
  for (const [id, matrix] of [
    ['srgb-to-xyz-matrix', srgbToXyz],
    ['srgb-to-xyz-matrix-printed', srgbToXyz],
    ['xyz-to-srgb-matrix', xyzToSrgb],
    ['xyz-to-srgb-matrix-printed', xyzToSrgb],
  ] as const)
    test(id, () => allNear(rowOf(id), [...matrix], rowOf(id).expected as number[][]));
  test('the variant matrix in circulation is not ours', () => {
    const variant = (rowOf('srgb-matrix-bt709-variant').expected as number[][]).flat();
    const worst = Math.max(...srgbToXyz.map((value, i) => Math.abs(value - variant[i]!)));
    expect(worst).toBeGreaterThan(2e-4);
    expect(worst).toBeLessThan(4e-4);
  });
});

describe('XYZ and L*a*b*, ISO/CIE 11664-4', () => {
  eachRow(rows, /^srgb-xyz-lab-/, 14, (row) => {
    const expected = row.expected as Record<'xyz_d65' | 'lab_d65' | 'lab_d50', [number, number, number]>;
    const xyz = apply3(srgbToXyz, linearOf(row.inputs.srgb as number[]));
    allNear(row, xyz, expected.xyz_d65);
    allNear(row, [...labOfXyz(xyz, d65)], expected.lab_d65);
    const d50 = xyzOfChromaticity([0.3457, 0.3585]);
    allNear(row, [...labOfXyz(apply3(adaptation(d65, d50), xyz), d50)], expected.lab_d50);
    const codes = apply3(xyzToSrgb, xyz).map((linear) => linearToSrgb(linear) * 255);
    for (const [i, code] of (row.inputs.srgb as number[]).entries()) near(row, codes[i]!, code);
  });
  eachRow(rows, /^lstar-[\d.]+$/, 13, (row) => {
    near(row, lightness(row.inputs.Y as number), row.expected as number);
    near(row, luminanceOfLightness(row.expected as number), row.inputs.Y as number);
  });
  eachRow(rows, /^lstar-inverse-/, 6, (row) => {
    const expected = row.expected as { Y: number; density: number };
    near(row, luminanceOfLightness(row.inputs.L as number), expected.Y);
    near(row, densityOfReflectance(expected.Y), expected.density);
    near(row, lightness(expected.Y), row.inputs.L as number);
  });
});

describe('density and step wedge, ISO 5-1', () => {
  eachRow(rows, /^density-/, 11, (row) => {
    near(row, densityOfReflectance(row.inputs.R as number), row.expected as number);
    near(row, reflectanceOfDensity(row.expected as number), row.inputs.R as number);
  });
  eachRow(rows, /^wedge-0.15-step-/, 21, (row) => {
    const expected = row.expected as { factor: number; stops: number; L_relative: number };
    const factor = reflectanceOfDensity(row.inputs.density_above_base as number);
    near(row, factor, expected.factor);
    near(row, -Math.log2(factor), expected.stops);
    // The rows print L* to nine digits.
    near(row, lightness(factor), expected.L_relative, 6e-8);
  });
  test('a step of 0.15 is not quite half a stop: step 20 lies short of 10 stops', () => {
    expect(-Math.log2(reflectanceOfDensity(3))).toBeCloseTo(9.966, 3);
  });
});

describe('tone area, Murray 1936 and Yule & Nielsen 1951', () => {
  eachRow(rows, /^murray-davies-\d$/, 8, (row) => {
    const { paper, solid, tint } = row.inputs as Record<string, number>;
    const expected = row.expected as Record<string, number>;
    const [ground, film, tone] = [paper!, solid!, tint!].map(reflectanceOfDensity) as [
      number,
      number,
      number,
    ];
    for (const [name, n] of [
      ['area_n1', 1],
      ['area_n1.7', 1.7],
      ['area_n2', 2],
      ['area_n_infinite', Number.POSITIVE_INFINITY],
    ] as const) {
      const area = toneArea(tone, ground, film, n);
      near(row, area, expected[name]!);
      near(row, reflectanceOfToneArea(area, ground, film, n), tone);
      // Relative to the ground the result is the same: nothing but ratios counts.
      near(row, toneArea(tone / ground, 1, film / ground, n), expected[name]!);
    }
  });
  eachRow(rows, /^murray-davies-forward-/, 3, (row) => {
    const { area, paper, solid } = row.inputs as Record<string, number>;
    const ground = reflectanceOfDensity(paper!);
    const film = reflectanceOfDensity(solid!);
    const tone = reflectanceOfToneArea(area!, ground, film);
    near(row, densityOfReflectance(tone), row.expected as number);
    near(row, toneArea(reflectanceOfDensity(row.expected as number), ground, film), area!);
  });
  test('densities without the paper taken off give 0.6215 for 0.5528: the common slip', () => {
    expect(toneArea(reflectanceOfDensity(0.4), 1, reflectanceOfDensity(1.5))).toBeCloseTo(0.621548, 6);
  });
  test('ground and solid alike leave no area', () => expect(toneArea(0.5, 0.5, 0.5)).toBeNaN());
});

describe('neutral row of the 24-patch chart', () => {
  eachRow(rows, /^chart24-/, 6, (row) => checkPatch(row));

  /** The maker prints L* to 2 decimals, and its nominal densities agree with its L* to about 0.02 only (stated in the rows). */
  function checkPatch(row: Row): void {
    const expected = row.expected as Record<string, number> & {
      srgb_d65_8bit: number[];
      lab_d50_from_nov_2014: Lab;
      lab_d50_of_the_srgb_triplet: number[];
    };
    const density = densityOfReflectance(luminanceOfLightness(expected.lab_d50_from_nov_2014[0]));
    near(row, density, expected.density_from_L_nov_2014!, 5e-5);
    near(row, density, expected.nominal_density!, 0.02);
    const d50 = xyzOfChromaticity([0.3457, 0.3585]);
    const xyz = apply3(adaptation(d65, d50), apply3(srgbToXyz, linearOf(expected.srgb_d65_8bit)));
    const lab = labOfXyz(xyz, d50);
    for (const [i, value] of expected.lab_d50_of_the_srgb_triplet.entries()) near(row, lab[i]!, value, 5e-4);
    expect(Math.abs(lab[0] - expected.lab_d50_from_nov_2014[0])).toBeLessThan(1.3);
  }
});
