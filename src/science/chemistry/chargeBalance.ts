/** pKw at 25 °C (CRC Handbook); used throughout, since the constants of the acids are for 25 °C too. */
const pKw = 14;

/** What is dissolved: acids by concentration, and the charge of ions that take no part (sodium, calcium …). */
export interface Solution {
  readonly acids: readonly { readonly molar: number; readonly pKa: readonly number[] }[];
  /** mol/l of positive charge that never changes; 0 for plain acids. */
  readonly fixedCharge: number;
}

export type ActivityModel = 'ideal' | 'extended Debye–Hückel';

/**
 * pH at 25 °C by charge balance: the hydrogen ions that make all charges cancel, found by bisection.
 * Ideal: concentrations for activities. Extended Debye–Hückel: log γ = −A z² √I / (1 + B a √I), A 0.509, B 0.328 per Å,
 * a 9 Å for H⁺ and 4 Å for the rest (Debye & Hückel 1923; ion sizes Kielland 1937, doi 10.1021/ja01288a032, from memory);
 * good to about 0.1 mol/l, beyond that an estimate: measure and log it.
 * @returns pH, −log₁₀ of the activity of H⁺; NaN for negative or missing concentrations.
 */
export function pHOf(solution: Solution, model: ActivityModel): number {
  if (solution.acids.some((acid) => !(acid.molar >= 0)) || Number.isNaN(solution.fixedCharge))
    return Number.NaN;
  let strength = 0;
  let pH = 7;
  // The ionic strength depends on the pH and the pH on the strength: a few rounds settle both.
  for (let round = 0; round < (model === 'ideal' ? 1 : 40); round++) {
    const gamma = activities(model === 'ideal' ? 0 : strength);
    let low = -2;
    let high = 16;
    for (let halving = 0; halving < 60; halving++) {
      pH = (low + high) / 2;
      if (excessCharge(solution, pH, gamma) > 0) low = pH;
      else high = pH;
    }
    strength = ionicStrength(solution, pH, gamma);
  }
  return pH;
}

interface Activities {
  readonly hydrogen: number;
  /** For an ion of that charge. */
  of(charge: number): number;
}

function activities(ionic: number): Activities {
  const root = Math.sqrt(ionic);
  const log = (charge: number, sizeAngstrom: number) =>
    (-0.509 * charge * charge * root) / (1 + 0.328 * sizeAngstrom * root);
  return { hydrogen: 10 ** log(1, 9), of: (charge) => 10 ** log(charge, 4) };
}

/** Positive minus negative charge, mol/l; falls as pH rises. */
function excessCharge(solution: Solution, pH: number, gamma: Activities): number {
  const hydrogen = 10 ** -pH / gamma.hydrogen;
  const hydroxide = 10 ** (pH - pKw) / gamma.of(1);
  const negative = solution.acids.reduce(
    (sum, acid) => sum + acid.molar * meanCharge(acid.pKa, pH, gamma),
    hydroxide,
  );
  return hydrogen + solution.fixedCharge - negative;
}

/** Shares of the forms of an acid that have lost 0, 1, 2 … protons. */
function shares(pKa: readonly number[], pH: number, gamma: Activities): number[] {
  const terms = [1];
  for (const [index, constant] of pKa.entries()) {
    const step = 10 ** (pH - constant) * (gamma.of(index) / gamma.of(index + 1));
    terms.push(terms[index]! * step);
  }
  const all = terms.reduce((sum, term) => sum + term, 0);
  return terms.map((term) => term / all);
}

function meanCharge(pKa: readonly number[], pH: number, gamma: Activities): number {
  if (pKa.length === 0) return 1;
  return shares(pKa, pH, gamma).reduce((sum, share, lost) => sum + share * lost, 0);
}

function ionicStrength(solution: Solution, pH: number, gamma: Activities): number {
  const ions = solution.acids.reduce((sum, acid) => {
    if (acid.pKa.length === 0) return sum + acid.molar;
    const forms = shares(acid.pKa, pH, gamma);
    return sum + forms.reduce((part, share, lost) => part + share * acid.molar * lost * lost, 0);
  }, 0);
  const water = 10 ** -pH / gamma.hydrogen + 10 ** (pH - pKw) / gamma.of(1);
  return (ions + water + Math.abs(solution.fixedCharge)) / 2;
}
