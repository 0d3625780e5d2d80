/** g/mol: IUPAC abridged standard atomic weights 2021, those that the studio's materials need. */
const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  P: 30.974,
  Ca: 40.078,
};

/**
 * Molar mass in g/mol of a formula without brackets, such as `H3PO4` or `C76H52O46`.
 * @returns NaN for a formula that can't be read, or with an element that isn't listed.
 */
export function molarMass(formula: string): number {
  if (!/^([A-Z][a-z]?\d*)+$/.test(formula)) return Number.NaN;
  return [...formula.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce(
    (sum, [, element, count]) => sum + (atomicWeights[element!] ?? Number.NaN) * Number(count || 1),
    0,
  );
}
