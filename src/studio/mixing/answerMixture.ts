import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { MixtureAnswer, MixtureFigure, MixtureQuestion } from '../../records/mixture.ts';
import {
  densityOfPercent,
  nitricAt20C,
  nitricPercentAt60F,
  phosphoricAt25C,
} from '../../science/chemistry/acidDensity.ts';
import { acids } from '../../science/chemistry/acids.ts';
import { baumeModulus, specificGravityOfBaume } from '../../science/chemistry/baume.ts';
import { pHOf } from '../../science/chemistry/chargeBalance.ts';
import {
  alligation,
  dilutionByWeight,
  molarity,
  stockForDilution,
} from '../../science/chemistry/concentration.ts';
import { droppedAcid, dropsPerMl } from '../../science/chemistry/drops.ts';
import { pHInGum } from '../../science/chemistry/gumBuffer.ts';
import { limestoneDissolved } from '../../science/chemistry/limestoneDissolved.ts';
import { molarMass } from '../../science/chemistry/molarMass.ts';

const acidIntoWater =
  'Pour acid INTO water or gum, never the other way; gloves and eye protection; follow the safety data sheet and local rules.';
const measureIt = 'An estimate: measure the pH of the mixture and log it.';

const figure = (name: string, value: number, unit: string, plusMinus?: number): MixtureFigure => ({
  name,
  value,
  unit,
  low: plusMinus === undefined ? null : value - plusMinus,
  high: plusMinus === undefined ? null : value + plusMinus,
});

/**
 * Works out one mixing question.
 * @returns `mixture-impossible` where no such mixture can be made of what was given.
 */
export function answerMixture(question: MixtureQuestion): Result<MixtureAnswer> {
  const answer = worked(question);
  const impossible = answer === null || answer.figures.some((each) => !Number.isFinite(each.value));
  return impossible ? fail(failure('mixture-impossible', { why: whyNot(question) })) : ok(answer);
}

function worked(question: MixtureQuestion): MixtureAnswer | null {
  switch (question.kind) {
    case 'parts': {
      const all = question.parts.reduce((sum, part) => sum + part.parts, 0);
      return {
        kind: question.kind,
        figures: question.parts.map((part) =>
          figure(part.material, (question.totalMl * part.parts) / all, 'ml'),
        ),
        formula: 'ml = total · parts / all parts',
        source: 'arithmetic; volumes taken as additive',
        cautions: [],
      };
    }
    case 'dilution': {
      const stockMl = stockForDilution(question.stock, question.wanted, question.wantedMl);
      return {
        kind: question.kind,
        figures: [figure('stock', stockMl, 'ml'), figure('fill up to', question.wantedMl, 'ml')],
        formula: 'c₁ v₁ = c₂ v₂',
        source: 'conservation of what is dissolved; fill up to the mark, since volumes do not add',
        cautions: [acidIntoWater],
      };
    }
    case 'weighed-dilution': {
      const made = dilutionByWeight(question.stock, question.wanted);
      return {
        kind: question.kind,
        figures: [
          figure('stock', made.stockMl, 'ml'),
          figure('stock', made.stockGrams, 'g'),
          figure('water', made.waterGrams, 'g'),
        ],
        formula: 'stock g = total g · wanted % / stock %; water g = total g − stock g',
        source: 'mass balance',
        cautions: [acidIntoWater],
      };
    }
    case 'alligation': {
      const parts = alligation(question.weakPercent, question.strongPercent, question.wantedPercent);
      return (
        parts && {
          kind: question.kind,
          figures: [
            figure('strong', parts.strongParts, 'parts by weight'),
            figure('weak', parts.weakParts, 'parts by weight'),
          ],
          formula: 'strong : weak = (wanted − weak) : (strong − wanted)',
          source: 'alligation alternate, pharmacy arithmetic',
          cautions: [],
        }
      );
    }
    case 'dropper': {
      const found = dropsPerMl(
        question.drops,
        question.grams,
        question.gramsPerMl,
        question.balanceStepGrams,
      );
      return {
        kind: question.kind,
        figures: [
          {
            name: 'drops to a millilitre',
            value: found.value,
            unit: '1/ml',
            low: found.low,
            high: found.high,
          },
        ],
        formula: 'drops · density / mass',
        source: 'your own weighed dropper; USP 32 <1101> allows 15 % for a calibrated one',
        cautions: found.warnings,
      };
    }
    case 'drops': {
      const found = droppedAcid(question.drops, question.dropsPerMl, question.acidMolarity, question.gumMl);
      return {
        kind: question.kind,
        figures: [
          figure('acid', found.acidMl, 'ml'),
          figure('acid', found.acidMmol, 'mmol'),
          figure('mixture', found.molarity, 'mol/l'),
        ],
        formula: 'ml = drops / drops to a ml; mol/l = mmol / (gum + acid)',
        source: 'arithmetic; volumes taken as additive',
        cautions: [acidIntoWater, 'Acid drops are not water drops: weigh your own.'],
      };
    }
    case 'baume':
      return baumeAnswer(question);
    case 'strength':
      return strengthAnswer(question);
    case 'pH':
      return pHAnswer(question);
    case 'limestone': {
      const found = limestoneDissolved(question.protonsMmol, question.areaCm2);
      return {
        kind: question.kind,
        figures: [
          { ...figure('limestone', found.grams, 'g'), low: 0, high: found.grams },
          { ...figure('mean depth', found.depthMicron, 'µm'), low: 0, high: found.depthMicron },
          { ...figure('carbon dioxide', found.carbonDioxideMl, 'ml'), low: 0, high: found.carbonDioxideMl },
        ],
        formula: 'CaCO₃ + 2 H⁺ → Ca²⁺ + H₂O + CO₂',
        source: 'stoichiometry, every proton spent on the stone',
        cautions: [
          'An upper bound: gum takes up the first acid, and the etch is lifted before all of it reacts.',
        ],
      };
    }
    default:
      return question satisfies never;
  }
}

function baumeAnswer(question: Extract<MixtureQuestion, { kind: 'baume' }>): MixtureAnswer {
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

function strengthAnswer(question: Extract<MixtureQuestion, { kind: 'strength' }>): MixtureAnswer {
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

function pHAnswer(question: Extract<MixtureQuestion, { kind: 'pH' }>): MixtureAnswer | null {
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

function whyNot(question: MixtureQuestion): string {
  switch (question.kind) {
    case 'dilution':
    case 'weighed-dilution':
      return 'the stock is not stronger than what is wanted';
    case 'alligation':
      return 'the wanted strength does not lie between the two';
    case 'baume':
    case 'strength':
      return 'the strength lies outside the table';
    case 'pH':
      return 'an acid is not known here, or more than one acid was mixed into gum';
    case 'parts':
    case 'dropper':
    case 'drops':
    case 'limestone':
      return 'an amount is zero';
    default:
      return question satisfies never;
  }
}
