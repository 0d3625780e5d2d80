/** Linear light 0..1 of an sRGB code value 0..1 (IEC 61966-2-1). */
export function srgbToLinear(code: number): number {
  return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
}

/** sRGB code value 0..1 of linear light 0..1 (IEC 61966-2-1). */
export function linearToSrgb(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Linear light of every sRGB code: 256 entries for 8 bits, 65,536 for 16. */
export function srgbTable(bits: 8 | 16): Float32Array {
  const top = bits === 8 ? 255 : 65535;
  return Float32Array.from({ length: top + 1 }, (_, code) => srgbToLinear(code / top));
}
