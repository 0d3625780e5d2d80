/** Still air of a room near 20 °C. */
export const roomAir = {
  viscosityPaS: 1.81e-5,
  meanFreePathMicron: 0.066,
  densityKgPerM3: 1.205,
  gravity: 9.81,
};

/**
 * Cunningham's slip correction: how much faster than a smooth fluid would let it a small sphere falls between molecules.
 * Constants of Hinds 1999, Aerosol Technology, 2nd ed., eq. 3.20.
 * @param micron diameter, from 0.2; below, printed tables differ from it by more than their own digits.
 */
export function slipCorrection(micron: number, meanFreePathMicron = roomAir.meanFreePathMicron): number {
  const ratio = micron / meanFreePathMicron;
  return 1 + (2.34 + 1.05 * Math.exp(-0.39 * ratio)) / ratio;
}

/**
 * Settling speed of a sphere in still air without its own wake: Stokes with slip, Hinds 1999, eq. 3.21.
 * @param micron diameter, above 0. @param density g/cm³, above 0.
 * @returns cm/s; from about 50 micron on too fast, see `settlingSpeed`.
 */
export function stokesSpeed(micron: number, density: number, slip = slipCorrection(micron)): number {
  const metres = micron * 1e-6;
  return (100 * density * 1000 * metres ** 2 * roomAir.gravity * slip) / (18 * roomAir.viscosityPaS);
}

/**
 * Settling speed of a sphere in still air, its drag by Schiller & Naumann 1935: Cd = 24/Re (1 + 0.15 Re^0.687).
 * @param micron diameter, 0.2 to 1000. @param density g/cm³, above 0.
 * @returns cm/s; NaN outside these ranges.
 */
export function settlingSpeed(micron: number, density: number): number {
  if (!(micron >= 0.2 && micron <= 1000 && density > 0)) return Number.NaN;
  const stokes = stokesSpeed(micron, density);
  const reynoldsPerSpeed = (roomAir.densityKgPerM3 * micron * 1e-6) / (100 * roomAir.viscosityPaS);
  let low = 0;
  let high = stokes;
  // The faster, the more drag: speed times drag rises, so halving finds where it meets Stokes' own.
  for (let middle = high / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (middle * (1 + 0.15 * (middle * reynoldsPerSpeed) ** 0.687) < stokes) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Minutes to fall so many metres in still air; NaN outside the ranges of `settlingSpeed` or for metres not above 0. */
export function fallMinutes(micron: number, density: number, metres: number): number {
  return metres > 0 ? (metres * 100) / settlingSpeed(micron, density) / 60 : Number.NaN;
}
