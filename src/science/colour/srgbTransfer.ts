/**
 * Linear light of an sRGB-coded value (IEC 61966-2-1:1999, with the break at 0.04045).
 * @param code 0..1; values outside are continued by the same curve, negative ones linearly.
 */
export function srgbToLinear(code: number): number {
  return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
}

/**
 * sRGB code of linear light (IEC 61966-2-1:1999, with the break at 0.0031308).
 * @param linear 0..1; values outside are continued by the same curve, negative ones linearly.
 */
export function linearToSrgb(linear: number): number {
  return linear <= 0.0031308 ? linear * 12.92 : 1.055 * linear ** (1 / 2.4) - 0.055;
}
