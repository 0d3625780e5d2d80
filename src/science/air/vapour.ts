/**
 * Litres that a mole of gas fills at 101.325 kPa: at 25 °C (United States; NIOSH 1994, IDLH documentation, turns its
 * limits so) and at 20 °C (Britain). Tables of limits name theirs.
 */
export const molarLitres = { at25C: 24.45, at20C: 24.0553 };

/**
 * mg/m³ of a vapour from ppm by volume: ppm · molar mass / litres.
 * @param ppm 0 or more. @param litres to a mole, of `molarLitres`.
 * @param molarMass g/mol; a mixture such as white spirit has no single one.
 */
export function mgPerM3OfPpm(ppm: number, molarMass: number, litres = molarLitres.at25C): number {
  return (ppm * molarMass) / litres;
}

/** ppm by volume of a vapour from mg/m³: the other way round, with the same units. */
export function ppmOfMgPerM3(mgPerM3: number, molarMass: number, litres = molarLitres.at25C): number {
  return (mgPerM3 * litres) / molarMass;
}

/**
 * What hangs in a well-mixed room while a source gives off steadily from the start: G / (N·V) · (1 − e^(−N·t)), the mass
 * balance of one zone.
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
