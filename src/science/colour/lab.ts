import type { Xyz } from './tristimulus.ts';

/** CIE 1976 L*, a*, b*. */
export type Lab = readonly [lightness: number, a: number, b: number];

// The exact constants of ISO/CIE 11664-4:2019.
const threshold = 216 / 24389;
const slope = 24389 / 27;

function compressed(ratio: number): number {
  return ratio > threshold ? Math.cbrt(ratio) : (slope * ratio + 16) / 116;
}

/**
 * CIE L* of a luminance relative to white (ISO/CIE 11664-4:2019).
 * @param luminance 0 and above, 1 at white; grey of 18 % is 49.5, not 50.
 * @returns 0 at black, 100 at white.
 */
export function lightness(luminance: number): number {
  return 116 * compressed(luminance) - 16;
}

/** Luminance relative to white, 1 at white, of a CIE L* of 0 and above: the inverse of `lightness`. */
export function luminanceOfLightness(value: number): number {
  return value > 8 ? ((value + 16) / 116) ** 3 : value / slope;
}

/**
 * CIE L*a*b* of XYZ under a white (ISO/CIE 11664-4:2019).
 * @param white XYZ of the white with the same scale; it must be the one the XYZ were computed with.
 */
export function labOfXyz(xyz: Xyz, white: Xyz): Lab {
  const x = compressed(xyz[0] / white[0]);
  const y = compressed(xyz[1] / white[1]);
  const z = compressed(xyz[2] / white[2]);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
