import { apply3, invert3, type Matrix3, multiply3 } from '../algebra/matrix3.ts';

/** CIE XYZ of the 2° observer, with Y of the white = 1. */
export type Xyz = readonly [x: number, y: number, z: number];

type Chromaticity = readonly [x: number, y: number];

// ITU-R BT.709 primaries and the white D65, as IEC 61966-2-1:1999 gives them.
const red: Chromaticity = [0.64, 0.33];
const green: Chromaticity = [0.3, 0.6];
const blue: Chromaticity = [0.15, 0.06];

/** XYZ of a chromaticity at Y = 1. */
export function xyzOfChromaticity([x, y]: Chromaticity): Xyz {
  return [x / y, 1, (1 - x - y) / y];
}

/**
 * The white of sRGB, from the chromaticity 0.3127, 0.3290. The tabulated D65 (0.95047, 1, 1.08883) is another white:
 * mixing the two leaves a false tint of up to 0.014 in b*.
 */
export const d65: Xyz = xyzOfChromaticity([0.3127, 0.329]);

/** The white of the ICC connection space (ICC.1:2022, 7.2.16). */
export const connectionWhite: Xyz = [0.9642, 1, 0.8249];

/** Linear sRGB 0..1 to XYZ under D65, derived from the primaries at full precision; the printed 4-digit pair is not exactly inverse. */
export const srgbToXyz: Matrix3 = fromPrimaries();

/** XYZ under D65 to linear sRGB: the exact inverse of `srgbToXyz`. */
export const xyzToSrgb: Matrix3 = invert3(srgbToXyz);

function fromPrimaries(): Matrix3 {
  const [r, g, b] = [xyzOfChromaticity(red), xyzOfChromaticity(green), xyzOfChromaticity(blue)];
  const columns: Matrix3 = [r[0], g[0], b[0], r[1], g[1], b[1], r[2], g[2], b[2]];
  return multiply3(columns, diagonal(apply3(invert3(columns), d65)));
}

// Bradford cone matrix, as ICC.1:2022 Annex E prints it.
const bradford: Matrix3 = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

/** Takes XYZ seen under one white to XYZ that look alike under another (linear Bradford, ICC.1:2022 Annex E). */
export function adaptation(from: Xyz, to: Xyz): Matrix3 {
  const seen = apply3(bradford, from);
  const wanted = apply3(bradford, to);
  const gains = diagonal([wanted[0] / seen[0], wanted[1] / seen[1], wanted[2] / seen[2]]);
  return multiply3(invert3(bradford), multiply3(gains, bradford));
}

function diagonal([a, b, c]: Xyz): Matrix3 {
  return [a, 0, 0, 0, b, 0, 0, 0, c];
}
