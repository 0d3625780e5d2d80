import { invert3, type Matrix3, multiply3 } from './matrix3.ts';

type Chromaticity = readonly [x: number, y: number];

// ITU-R BT.709 primaries and D65, as IEC 61966-2-1 gives them; D50 as the ICC connection space states it (ICC.1 7.2.16).
const red: Chromaticity = [0.64, 0.33];
const green: Chromaticity = [0.3, 0.6];
const blue: Chromaticity = [0.15, 0.06];
const d65: Chromaticity = [0.3127, 0.329];
const d50 = [0.9642, 1, 0.8249] as const;

// Bradford cone matrix, as ICC.1 Annex E prints it.
const bradford: Matrix3 = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

function toXyz([x, y]: Chromaticity): readonly [number, number, number] {
  return [x / y, 1, (1 - x - y) / y];
}

function apply(m: Matrix3, v: readonly number[]): readonly [number, number, number] {
  const row = (r: number) => m[r * 3]! * v[0]! + m[r * 3 + 1]! * v[1]! + m[r * 3 + 2]! * v[2]!;
  return [row(0), row(1), row(2)];
}

function diagonal(v: readonly number[]): Matrix3 {
  return [v[0]!, 0, 0, 0, v[1]!, 0, 0, 0, v[2]!];
}

/** Linear sRGB to XYZ of the ICC connection space (D50, Bradford-adapted from D65): rows X, Y, Z. */
export function srgbToConnection(): Matrix3 {
  const [r, g, b] = [toXyz(red), toXyz(green), toXyz(blue)];
  const columns: Matrix3 = [r[0], g[0], b[0], r[1], g[1], b[1], r[2], g[2], b[2]];
  const gains = apply(invert3(columns), toXyz(d65));
  const toXyzD65 = multiply3(columns, diagonal(gains));
  const from = apply(bradford, toXyz(d65));
  const to = apply(bradford, d50);
  const adapt = multiply3(invert3(bradford), multiply3(diagonal(to.map((v, i) => v / from[i]!)), bradford));
  return multiply3(adapt, toXyzD65);
}
