/**
 * Baumé moduli for liquids heavier than water. They are different scales: 42 °Bé is 1.4078 on one and 1.4118 on another.
 * CRC Handbook of Chemistry and Physics, 51st ed., 1970, hydrometer conversions; `us` is SG 60/60 °F, in Marks' Standard
 * Handbook for Mechanical Engineers too.
 */
export const baumeModulus = { us: 145, oldDutch: 144, gerlach: 146.78 } as const;

/**
 * Specific gravity of a liquid heavier than water: modulus / (modulus − °Bé).
 * @param baume °Bé, 0 or more and below the modulus; NaN outside.
 */
export function specificGravityOfBaume(baume: number, modulus: number = baumeModulus.us): number {
  return baume >= 0 && baume < modulus ? modulus / (modulus - baume) : Number.NaN;
}

/**
 * °Bé of a liquid heavier than water: modulus − modulus / SG.
 * @param specificGravity 1 or more; NaN below.
 */
export function baumeOfSpecificGravity(specificGravity: number, modulus: number = baumeModulus.us): number {
  return specificGravity >= 1 ? modulus - modulus / specificGravity : Number.NaN;
}
