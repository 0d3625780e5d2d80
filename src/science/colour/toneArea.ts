/**
 * Effective area of a tone from reflectances, ground, solid and tone each read alike: (R_g^(1/n) − R^(1/n)) / (R_g^(1/n) − R_s^(1/n)).
 * With n = 1 it is Murray, A. (1936), J. Franklin Institute 221, 721–744, doi 10.1016/S0016-0032(36)90524-0, and takes in
 * what light spreading in the paper adds; a larger n takes part of that out again: Yule, J. A. C. & Nielsen, W. J. (1951),
 * TAGA Proceedings 3, 65–76.
 * @param tone reflectance of the tone, in the same unit as the others; above 0.
 * @param ground reflectance of the bare ground, above that of the solid.
 * @param solid reflectance of a full film, above 0 for n other than 1.
 * @param n 1 and above; infinity gives the ratio of densities above ground.
 * @returns 0..1 between ground and solid; below 0 for a tone lighter than its ground, above 1 for one darker than its
 * solid: such readings are out of range, not wrong arithmetic. NaN where ground and solid are equal.
 */
export function toneArea(tone: number, ground: number, solid: number, n = 1): number {
  const scale = (reflectance: number) =>
    n === Number.POSITIVE_INFINITY ? Math.log(reflectance) : reflectance ** (1 / n);
  const whole = scale(ground) - scale(solid);
  return whole === 0 ? Number.NaN : (scale(ground) - scale(tone)) / whole;
}

/** Reflectance of a tone of known effective area: the inverse of `toneArea`, with the same ranges; `area` 0..1. */
export function reflectanceOfToneArea(area: number, ground: number, solid: number, n = 1): number {
  if (n === Number.POSITIVE_INFINITY) return ground * (solid / ground) ** area;
  return ((1 - area) * ground ** (1 / n) + area * solid ** (1 / n)) ** n;
}
