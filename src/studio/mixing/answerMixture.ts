import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { MixtureAnswer, MixtureQuestion } from '../../records/mixture.ts';
import { alligation, dilutionByWeight, stockForDilution } from '../../science/chemistry/concentration.ts';
import { droppedAcid, dropsPerMl } from '../../science/chemistry/drops.ts';
import { limestoneDissolved } from '../../science/chemistry/limestoneDissolved.ts';
import { baumeAnswer, pHAnswer, strengthAnswer } from './acidAnswers.ts';
import { figure } from './mixtureFigure.ts';

const acidIntoWater =
  'Pour acid INTO water or gum, never the other way; gloves and eye protection; follow the safety data sheet and local rules.';

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
