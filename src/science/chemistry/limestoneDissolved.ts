import { molarMass } from './molarMass.ts';

export interface DissolvedLimestone {
  readonly grams: number;
  /** Mean depth over the area, µm. */
  readonly depthMicron: number;
  /** Carbon dioxide given off at 25 °C and 101.325 kPa, ml. */
  readonly carbonDioxideMl: number;
}

/** l/mol of an ideal gas at 25 °C and 101.325 kPa. */
const molarVolume25C = 24.4654;
/** g/cm³ of calcite, from memory; a porous stone loses more depth for the same mass. */
const calciteDensity = 2.71;

/**
 * The most limestone an etch can dissolve: CaCO₃ + 2 H⁺ → Ca²⁺ + H₂O + CO₂, every proton spent on the stone.
 * An upper bound: real etches are wiped off before all of it reacts, and gum takes up the first.
 * @param protonsMmol mmol of protons that can react; phosphoric acid may give one or two.
 * @param areaCm2 above 0.
 */
export function limestoneDissolved(
  protonsMmol: number,
  areaCm2: number,
  density: number = calciteDensity,
): DissolvedLimestone {
  const mmol = protonsMmol / 2;
  const grams = (mmol * molarMass('CaCO3')) / 1000;
  return { grams, depthMicron: (grams / density / areaCm2) * 10_000, carbonDioxideMl: mmol * molarVolume25C };
}
