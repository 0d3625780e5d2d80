/** Litres that a mole of gas fills: at 25 °C (United States) and at 20 °C (Britain). Tables of limits name theirs. */
export const molarLitres = { at25C: 24.45, at20C: 24.0553 };

/**
 * mg/m³ of a vapour from ppm by volume.
 * @param molarMass g/mol; a mixture such as white spirit has no single one.
 */
export function mgPerM3OfPpm(ppm: number, molarMass: number, litres = molarLitres.at25C): number {
  return (ppm * molarMass) / litres;
}

/** The other way round. */
export function ppmOfMgPerM3(mgPerM3: number, molarMass: number, litres = molarLitres.at25C): number {
  return (mgPerM3 * litres) / molarMass;
}

/**
 * What hangs in a well-mixed room while a source gives off steadily from the start: G / (N·V) · (1 − e^(−N·t)).
 * @param gramsPerHour G, 0 or more. @param airChangesPerHour N, above 0. @param roomM3 V, above 0. @param hours t;
 * Infinity for the level that it comes to.
 * @returns mg/m³.
 */
export function steadySourceMgPerM3(
  gramsPerHour: number,
  airChangesPerHour: number,
  roomM3: number,
  hours: number,
): number {
  return ((gramsPerHour * 1000) / (airChangesPerHour * roomM3)) * -Math.expm1(-airChangesPerHour * hours);
}
