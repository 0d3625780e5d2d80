import type { Measured } from '../../foundation/measured.ts';
import { pHOf } from './chargeBalance.ts';

/** Gum as a solution of carboxyl groups, some of them neutralised by calcium, magnesium and potassium. */
export interface Gum {
  readonly gramsPerLitre: number;
  /** Its pH as measured. */
  readonly pH: number;
}

/**
 * Grams of gum to one equivalent of carboxyl. Published: 1587 for A. seyal, other species to 3409;
 * 1000–1200 for A. senegal from memory. The range is the uncertainty.
 */
const equivalentWeight = { low: 1000, value: 1200, high: 1600 };
/** Apparent pKa of the uronic acids: from memory, 3 to 3.6. */
const apparentPKa = { low: 3, value: 3.3, high: 3.6 };

/**
 * pH of an acid mixed into gum, gum taking up the first of it: charge balance over both, ideal, 25 °C.
 * An estimate between unconfirmed bounds: measure and log it.
 * @param acid mol/l in the mixture, with its pKa (none for a strong acid).
 */
export function pHInGum(
  acid: { readonly molar: number; readonly pKa: readonly number[] },
  gum: Gum,
): Measured {
  const at = (weight: number, pKa: number) => {
    const carboxyl = { molar: gum.gramsPerLitre / weight, pKa: [pKa] };
    const neutralised = carboxyl.molar / (1 + 10 ** (pKa - gum.pH)) - 10 ** -gum.pH + 10 ** (gum.pH - 14);
    return pHOf({ acids: [acid, carboxyl], fixedCharge: neutralised }, 'ideal');
  };
  const corners = [equivalentWeight.low, equivalentWeight.high].flatMap((weight) =>
    [apparentPKa.low, apparentPKa.high].map((pKa) => at(weight, pKa)),
  );
  return {
    value: at(equivalentWeight.value, apparentPKa.value),
    low: Math.min(...corners),
    high: Math.max(...corners),
    basis: 'memory',
    warnings: ['Gum differs by species and age: measure the pH of this mixture and log it.'],
  };
}

/** Glucuronic acid in a gum, %, from its acid equivalent weight: 194.14 / weight · 100 (as used in gum analyses). */
export function glucuronicPercent(acidEquivalentWeight: number): number {
  return (194.14 / acidEquivalentWeight) * 100;
}
