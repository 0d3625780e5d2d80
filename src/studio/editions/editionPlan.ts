import type { Measured } from '../../foundation/measured.ts';
import type { SheetMm } from '../../records/edition.ts';
import type { EditionPlan, EditionQuestion, TearDown } from '../../records/editionPlan.ts';
import { inkForPulls } from '../ink/inkMix.ts';
import { dampGrowth } from './dampGrowth.ts';
import { pressMinutes } from './pressMinutes.ts';
import { goodPrintsWanted, sheetsFor } from './sheetCount.ts';
import { sheetGrams } from './sheetMass.ts';
import { spoilageRate } from './spoilage.ts';
import { tearDown } from './tearDown.ts';

/** Newsprint before the good paper, sheets. Common practice, no source. */
const newsprint: Measured = {
  value: 12,
  low: 10,
  high: 15,
  basis: 'common practice',
  warnings: ['Newsprint first: it can look better than the good paper.'],
};

/** What an edition needs, worked out from what is known; what isn't is null, never 0. */
export function planEdition(question: EditionQuestion): EditionPlan {
  const { size, artistProofs, paper, inkedCm2, past } = question;
  const spoilage = spoilageRate(past);
  const sheets = sheetsFor(size, artistProofs, spoilage.value);
  const inAll = sheets.reduce((sum, part) => sum + part.sheets, 0);
  const pieceMm = paper.pieceMm ?? paper.sheetMm;
  const torn =
    paper.sheetMm && pieceMm ? tearDown({ ...paper, sheetMm: paper.sheetMm, pieceMm }, inAll) : null;
  const places = question.rackPlaces;
  return {
    sheets,
    sheetsInAll: inAll,
    goodWanted: goodPrintsWanted(size, artistProofs),
    spoilage,
    newsprint,
    tearDown: torn,
    paperGrams: pieceMm && paper.gramsPerM2 !== null ? massOf(inAll, pieceMm, paper.gramsPerM2) : null,
    growthMm: pieceMm && paper.damped !== 'no' ? dampGrowth(pieceMm, grainAtPress(question, torn)) : null,
    inkGrams: inkedCm2 === null ? null : inkForPulls(inkedCm2 * 100, inAll + newsprint.high),
    minutes: pressMinutes(inAll, past.intervalsMinutes),
    rackPlaces: { needed: inAll, missing: places === null ? null : Math.max(0, inAll - places) },
    sentences: sentencesOf(question, inAll, torn),
  };
}

function massOf(sheets: number, pieceMm: SheetMm, gramsPerM2: number): Measured {
  const grams = sheets * sheetGrams(pieceMm, gramsPerM2);
  return {
    value: grams,
    low: grams,
    high: grams,
    basis: 'typed',
    warnings: ['Dry, by the stated grammage.'],
  };
}

function grainAtPress({ paper }: EditionQuestion, torn: TearDown | null) {
  return paper.pieceMm === null ? paper.sheetGrain : (torn?.pieceGrain ?? 'unknown');
}

function sentencesOf(
  { paper, inkedCm2, rackPlaces }: EditionQuestion,
  sheets: number,
  torn: TearDown | null,
): string[] {
  const said: string[] = [];
  if (paper.damped === 'yes') {
    said.push(
      `Damp all ${sheets} sheets the evening before and let them lie stacked under a board; the newsprint stays dry (common practice, no source).`,
    );
  }
  if (paper.damped === 'unknown')
    said.push('Damp or dry paper is not decided: damp and dry prints don’t compare.');
  if (torn === null) said.push('Give the size of the sheet to see how it is torn.');
  else said.push(...torn.sentences);
  if (inkedCm2 === null) said.push('Give the inked area to see how much ink it takes.');
  if (rackPlaces !== null && rackPlaces < sheets) {
    said.push(
      `The rack has ${rackPlaces} places for ${sheets} prints: interleave ${sheets - rackPlaces}, or print on two days.`,
    );
  }
  return said;
}
