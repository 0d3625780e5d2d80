/**
 * Reflection density −log10 R (ISO 5-1:2009, functional notation). From a camera it is relative, not of a named status.
 * @param reflectance factor, above 0, 1 for a perfect white; 0 gives infinity, below 0 NaN.
 */
export function densityOfReflectance(reflectance: number): number {
  return reflectance === 1 ? 0 : -Math.log10(reflectance);
}

/** Reflectance factor 10^−D of a density; 0.30103 of density is one photographic stop, so a step of 0.15 is not quite half a stop. */
export function reflectanceOfDensity(density: number): number {
  return 10 ** -density;
}
