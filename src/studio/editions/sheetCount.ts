import type { SheetPart } from '../../records/editionPlan.ts';

/** Proofs until three in a row are good to print. Our rule. */
const goodToPrintSheets = 3;
/** Fewest sheets kept for spoilage. Our rule. */
const leastSpoiled = 3;

/** Artist's proofs by the rule: one in ten of the edition, at least one. Our rule. */
export function artistProofsFor(size: number): number {
  return Math.max(1, roundedUp(size * 0.1));
}

/**
 * Sheets that an edition needs, each part rounded up: the edition, artist's proofs, one each for approval, the printer
 * and the archive, three for good-to-print, and what spoils. Our rule: 5 → 15, 30 → 48 at 30 % spoilage.
 * @param size 1 or more. @param artistProofs null: by the rule. @param spoilage spoiled sheets for each of the edition.
 */
export function sheetsFor(size: number, artistProofs: number | null, spoilage: number): readonly SheetPart[] {
  return [
    { what: 'edition', sheets: size, words: 'numbered and signed' },
    {
      what: 'artist',
      sheets: artistProofs ?? artistProofsFor(size),
      words:
        artistProofs === null ? 'artist’s proofs: one in ten, at least one' : 'artist’s proofs, as asked',
    },
    { what: 'approval', sheets: 1, words: 'the proof that is approved' },
    { what: 'printer', sheets: 1, words: 'printer’s proof' },
    { what: 'archive', sheets: 1, words: 'for the archive' },
    { what: 'good-to-print', sheets: goodToPrintSheets, words: 'until the print is good: three alike' },
    {
      what: 'spoilage',
      sheets: Math.max(leastSpoiled, roundedUp(size * spoilage)),
      words: `spoilage: ${Math.round(100 * spoilage)} % of the edition, at least ${leastSpoiled}`,
    },
  ];
}

/** Good prints that the press owes: the edition, artist's, printer's and archive's; the approved proof comes before. */
export function goodPrintsWanted(size: number, artistProofs: number | null): number {
  return size + (artistProofs ?? artistProofsFor(size)) + 2;
}

/** The next whole number; a product that is whole but for the last bit of its floating point is whole. */
function roundedUp(value: number): number {
  return Math.ceil(value - 1e-9);
}
