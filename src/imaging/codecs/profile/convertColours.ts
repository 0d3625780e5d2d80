import { invert3, type Matrix3, multiply3 } from '../../../science/algebra/matrix3.ts';
import { linearToSrgb } from '../../../science/colour/srgbTransfer.ts';
import { srgbToConnection } from './primaries.ts';
import type { ToneResponse } from './readToneCurve.ts';

/** A profile within this of sRGB, in code values 0..1, is sRGB: rounding of its table and s15Fixed16 numbers. */
const sameAsSrgb = 0.002;
/** Finer than a 16-bit code everywhere but in the first few codes above black. */
const encodeSteps = 1 << 16;

type Codes = Uint8Array | Uint16Array;

/**
 * Converts interleaved RGB codes in place from a matrix profile to sRGB codes of the same depth.
 * Colours outside sRGB are clipped channel by channel; greys never are. Leaves the codes alone when the
 * profile is sRGB already.
 */
export function convertRgbInPlace(
  codes: Codes,
  toConnection: Matrix3,
  curves: readonly ToneResponse[],
): void {
  const matrix = multiply3(invert3(srgbToConnection()), toConnection);
  if (isIdentity(matrix) && curves.every(isSrgbCurve)) return;
  const top = codes instanceof Uint8Array ? 255 : 65535;
  const [red, green, blue] = curves.map((curve) => table(curve, top)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  const encode = encodeTable(codes instanceof Uint8Array ? 8 : 16);
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = matrix as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let index = 0; index < codes.length; index += 3) {
    const r = red[codes[index]!]!;
    const g = green[codes[index + 1]!]!;
    const b = blue[codes[index + 2]!]!;
    codes[index] = encode[step(m0 * r + m1 * g + m2 * b)]!;
    codes[index + 1] = encode[step(m3 * r + m4 * g + m5 * b)]!;
    codes[index + 2] = encode[step(m6 * r + m7 * g + m8 * b)]!;
  }
}

/** Converts one-channel codes in place from a tone curve to sRGB codes of the same depth. */
export function convertGreyInPlace(codes: Codes, curve: ToneResponse): void {
  if (isSrgbCurve(curve)) return;
  const top = codes instanceof Uint8Array ? 255 : 65535;
  const map = Uint16Array.from({ length: top + 1 }, (_, code) =>
    Math.round(linearToSrgb(curve(code / top)) * top),
  );
  for (let index = 0; index < codes.length; index++) codes[index] = map[codes[index]!]!;
}

function step(light: number): number {
  const scaled = Math.sqrt(Math.min(Math.max(light, 0), 1)) * (encodeSteps - 1);
  return (scaled + 0.5) | 0;
}

/** sRGB codes over the square root of light, which spaces the steps almost evenly in code values. */
function encodeTable(bits: 8 | 16): Codes {
  const top = bits === 8 ? 255 : 65535;
  const encoded = (_: unknown, index: number) =>
    Math.round(linearToSrgb((index / (encodeSteps - 1)) ** 2) * top);
  return bits === 8
    ? Uint8Array.from({ length: encodeSteps }, encoded)
    : Uint16Array.from({ length: encodeSteps }, encoded);
}

function table(curve: ToneResponse, top: number): Float32Array {
  return Float32Array.from({ length: top + 1 }, (_, code) => curve(code / top));
}

function isIdentity(matrix: Matrix3): boolean {
  return matrix.every((value, index) => Math.abs(value - (index % 4 === 0 ? 1 : 0)) < sameAsSrgb);
}

function isSrgbCurve(curve: ToneResponse): boolean {
  return Array.from({ length: 65 }, (_, index) => index / 64).every(
    (code) => Math.abs(linearToSrgb(curve(code)) - code) < sameAsSrgb,
  );
}
