/** Linear light 0..1 of a device code 0..1. */
export type ToneResponse = (code: number) => number;

/** How many parameters each function type of a `para` tag has (ICC.1:2022, table 68). */
const parameterCounts = [1, 3, 4, 5, 7];

/**
 * Reads an ICC `curv` tag (identity, one gamma as u8Fixed8, or a table of 16-bit values, interpolated linearly)
 * or a `para` tag (function types 0 to 4). Results are clamped to 0..1. Null when the tag is malformed.
 */
export function readToneCurve(tag: DataView): ToneResponse | null {
  const signature = String.fromCharCode(...[0, 1, 2, 3].map((index) => tag.getUint8(index)));
  if (signature === 'curv') return readCurve(tag);
  if (signature === 'para') return readParametric(tag);
  return null;
}

function readCurve(tag: DataView): ToneResponse | null {
  if (tag.byteLength < 12) return null;
  const count = tag.getUint32(8);
  if (count === 0) return clamp;
  if (12 + 2 * count > tag.byteLength) return null;
  if (count === 1) {
    const gamma = tag.getUint16(12) / 256;
    return (code) => clamp(code) ** gamma;
  }
  const table = Float64Array.from({ length: count }, (_, index) => tag.getUint16(12 + 2 * index) / 65535);
  return (code) => {
    const position = clamp(code) * (count - 1);
    const below = Math.min(Math.floor(position), count - 2);
    return table[below]! + (position - below) * (table[below + 1]! - table[below]!);
  };
}

function readParametric(tag: DataView): ToneResponse | null {
  if (tag.byteLength < 12) return null;
  const type = tag.getUint16(8);
  const count = parameterCounts[type];
  if (count === undefined || 12 + 4 * count > tag.byteLength) return null;
  const p = Array.from({ length: count }, (_, index) => tag.getInt32(12 + 4 * index) / 65536);
  const [g, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0] = p as [number, ...number[]];
  const power = (code: number) => Math.max(0, a * code + b) ** g;
  switch (type) {
    case 0:
      return (code) => clamp(clamp(code) ** g);
    case 1:
      return (code) => clamp(code >= -b / a ? power(code) : 0);
    case 2:
      return (code) => clamp(code >= -b / a ? power(code) + c : c);
    case 3:
      return (code) => clamp(code >= d ? power(code) : c * code);
    default:
      return (code) => clamp(code >= d ? power(code) + e : c * code + f);
  }
}

function clamp(value: number): number {
  return Math.min(Math.max(value, 0), 1);
}
