/** A part of a blend. */
export interface BlendPart {
  /** Kinematic viscosity, mm²/s, above 0.2. */
  readonly viscosity: number;
  /** Share of the whole; the shares of a blend sum to 1. */
  readonly share: number;
}

/**
 * Viscosity blending number, which mixes by shares: 14.534 ln ln(ν + 0.8) + 10.975 (Refutas, as Maples 2000 gives it; read
 * second-hand).
 * @param viscosity ν, mm²/s, above 0.2; NaN below.
 */
export function blendingNumber(viscosity: number): number {
  return 14.534 * Math.log(Math.log(viscosity + 0.8)) + 10.975;
}

/** The viscosity that has such a blending number, mm²/s: `blendingNumber` the other way round, by the same source. */
export function viscosityOfNumber(number: number): number {
  return Math.exp(Math.exp((number - 10.975) / 14.534)) - 0.8;
}

/**
 * Viscosity of a blend by blending numbers, mm²/s. ASTM D7152, which holds such rules, leaves out products that thin as they
 * are worked or hold particles: for printing ink the figure is an estimate only.
 * @returns NaN where a part's viscosity is not above 0.2 mm²/s.
 */
export function blendViscosity(parts: readonly BlendPart[]): number {
  return viscosityOfNumber(
    parts.reduce((sum, { viscosity, share }) => sum + share * blendingNumber(viscosity), 0),
  );
}

/**
 * The same by logarithms (Arrhenius, from memory), in whatever unit all viscosities are given. An estimate only, as above.
 * @returns NaN where a part's viscosity is below 0.
 */
export function logarithmicBlend(parts: readonly BlendPart[]): number {
  return Math.exp(parts.reduce((sum, { viscosity, share }) => sum + share * Math.log(viscosity), 0));
}
