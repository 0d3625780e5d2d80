import type { MixtureAnswer, MixtureQuestion } from '../../records/mixture.ts';
import {
  densityOfPercent,
  nitricAt20C,
  nitricPercentAt60F,
  phosphoricAt25C,
} from '../../science/chemistry/acidDensity.ts';
import { acids } from '../../science/chemistry/acids.ts';
import { baumeModulus, specificGravityOfBaume } from '../../science/chemistry/baume.ts';
import { pHOf } from '../../science/chemistry/chargeBalance.ts';
import { molarity } from '../../science/chemistry/concentration.ts';
import { pHInGum } from '../../science/chemistry/gumBuffer.ts';
import { molarMass } from '../../science/chemistry/molarMass.ts';
import { figure } from './mixtureFigure.ts';

const measureIt = 'An estimate: measure the pH of the mixture and log it.';

/** Specific gravity of a Baumé reading; of nitric acid its strength too. */
export function baumeAnswer(question: Extract<MixtureQuestion, { kind: 'baume' }>): MixtureAnswer {
  const modulus = question.modulus ?? baumeModulus.us;
  const gravity = specificGravityOfBaume(question.baume, modulus);
  const figures = [figure('specific gravity', gravity, '1', 0.0005)];
  if (question.liquid === 'nitric') {
    const percent = nitricPercentAt60F(gravity);
    figures.push(figure('strength', percent, '% by weight', 1));
    figures.push(figure('molarity', molarity(percent, gravity * 0.99904, molarMass('HNO3')), 'mol/l', 0.3));
  }
  return {
    kind: 'baume',
    figures,
    formula: `specific gravity = ${modulus} / (${modulus} − °Bé)`,
    source: "CRC Handbook of Chemistry and Physics, 51st ed.; Marks' Standard Handbook (US scale, 60/60 °F)",
    cautions: ['Other Baumé scales exist (144, 146.78): look at what the hydrometer says.'],
  };
}

/** Density and molarity of an acid by its strength, from its table or a density that was typed. */
export function strengthAnswer(question: Extract<MixtureQuestion, { kind: 'strength' }>): MixtureAnswer {
  const table = question.acid === 'nitric' ? nitricAt20C : phosphoricAt25C;
  const density = question.gramsPerMl ?? densityOfPercent(table, question.percent);
  const mass = molarMass(question.acid === 'nitric' ? 'HNO3' : 'H3PO4');
  const molar = molarity(question.percent, density, mass);
  const doubt = question.gramsPerMl === undefined ? table.plusMinus : 0.0005;
  return {
    kind: 'strength',
    figures: [
      figure('density', density, 'g/ml', doubt),
      figure('molarity', molar, 'mol/l', (molar * doubt) / density),
    ],
    formula: 'mol/l = 10 · % · density / molar mass',
    source: question.gramsPerMl === undefined ? table.source : 'density as typed',
    cautions: ['Two acids are called concentrated nitric: 70 % is 15.8 mol/l, 68 % (42 °Bé) about 15.2.'],
  };
}

/** pH of acids, or of one acid in gum; null for an acid that is not known here, and for several in gum. */
export function pHAnswer(question: Extract<MixtureQuestion, { kind: 'pH' }>): MixtureAnswer | null {
  const known = question.acids.map((asked) => ({
    molar: asked.molar,
    acid: acids.find((acid) => acid.id === asked.id),
  }));
  if (known.some(({ acid }) => acid === undefined)) return null;
  const dissolved = known.map(({ molar, acid }) => ({ molar, pKa: acid!.pKa }));
  const source = known.map(({ acid }) => acid!.source).join('; ');
  if (question.gum && dissolved.length === 1) {
    const found = pHInGum(dissolved[0]!, question.gum);
    return {
      kind: 'pH',
      figures: [{ name: 'pH', value: found.value, unit: 'pH', low: found.low, high: found.high }],
      formula: 'charge balance over acid and the gum’s carboxyl groups, ideal, 25 °C',
      source: `${source}; equivalent weight and pKa of gum from memory`,
      cautions: [measureIt, ...found.warnings],
    };
  }
  if (question.gum) return null;
  const solution = { acids: dissolved, fixedCharge: 0 };
  const active = pHOf(solution, 'extended Debye–Hückel');
  return {
    kind: 'pH',
    figures: [
      figure('pH', active, 'pH', 0.05),
      figure('pH without activities', pHOf(solution, 'ideal'), 'pH'),
    ],
    formula: 'charge balance with extended Debye–Hückel activities, 25 °C',
    source,
    cautions: [measureIt],
  };
}
