/**
 * Moles per litre of a solution given by weight, by definition: 10 · % · density / molar mass.
 * @param percentByWeight 0..100.
 * @param gramsPerMl density of the solution, above 0.
 * @param gramsPerMol molar mass of the dissolved substance, above 0.
 */
export function molarity(percentByWeight: number, gramsPerMl: number, gramsPerMol: number): number {
  return (10 * percentByWeight * gramsPerMl) / gramsPerMol;
}

/** Moles per litre of a solution given by mass per volume, by definition. @param gramsPerLitre 0 or more. @param gramsPerMol above 0. */
export function molarityOfGramsPerLitre(gramsPerLitre: number, gramsPerMol: number): number {
  return gramsPerLitre / gramsPerMol;
}

/**
 * Volume of stock that holds as much as the wanted volume of the weaker solution: c₁v₁ = c₂v₂.
 * @param stock @param wanted strengths by volume, of one unit, above 0.
 * @returns ml of stock, `wantedMl` where both are equally strong; NaN where the stock is weaker than what is wanted.
 */
export function stockForDilution(stock: number, wanted: number, wantedMl: number): number {
  return stock >= wanted && stock > 0 ? (wanted * wantedMl) / stock : Number.NaN;
}

/** What a dilution by weight needs. Volumes don't add, so water is given by mass balance. */
export interface WeighedDilution {
  readonly stockGrams: number;
  readonly stockMl: number;
  readonly waterGrams: number;
}

/**
 * Dilutes a stock to a wanted strength by weight, by mass balance.
 * @param wanted % by weight, its density in g/ml, and the volume in ml.
 * @returns NaN throughout where the stock is weaker than what is wanted.
 */
export function dilutionByWeight(
  stock: { readonly percent: number; readonly gramsPerMl: number },
  wanted: { readonly percent: number; readonly gramsPerMl: number; readonly ml: number },
): WeighedDilution {
  const totalGrams = wanted.ml * wanted.gramsPerMl;
  const stockGrams = stockForDilution(stock.percent, wanted.percent, totalGrams);
  return { stockGrams, stockMl: stockGrams / stock.gramsPerMl, waterGrams: totalGrams - stockGrams };
}

/** "1 to 10" as volume per cent of stock, by definition: parts / (all parts) · 100; both 0 or more. One part to a hundred is 0.99 %, not 1 %. */
export function volumePercentOfParts(stockParts: number, otherParts: number): number {
  return (100 * stockParts) / (stockParts + otherParts);
}

/**
 * Alligation alternate, the pharmacist's rule (common practice, no source; it follows from the mass balance): parts by weight of a strong and a weak solution for a wanted strength, in smallest whole numbers
 * where the strengths are whole, else as a ratio to one part of the strong.
 * @returns null where the wanted strength does not lie between the two.
 */
export function alligation(
  weakPercent: number,
  strongPercent: number,
  wantedPercent: number,
): { readonly strongParts: number; readonly weakParts: number } | null {
  const strong = wantedPercent - weakPercent;
  const weak = strongPercent - wantedPercent;
  if (strong < 0 || weak < 0 || strong + weak <= 0) return null;
  if (!Number.isInteger(strong) || !Number.isInteger(weak)) {
    return strong === 0 ? { strongParts: 0, weakParts: 1 } : { strongParts: 1, weakParts: weak / strong };
  }
  const divisor = greatestCommonDivisor(strong, weak);
  return { strongParts: strong / divisor, weakParts: weak / divisor };
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
