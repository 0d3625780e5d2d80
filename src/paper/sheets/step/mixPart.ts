import type { BatchNeed, EtchPart } from '../../../records/etch.ts';
import { plannedMixtures } from '../../../studio/etch/mixtures.ts';
import { asWritten } from '../../../words/asWritten.ts';
import type { SheetContent } from '../pdfDocument.ts';
import { figure, mlText, stepPart } from './stepParts.ts';
import type { SheetLook, StepSheetInput } from './stepSheetInput.ts';

/** What to have ready and what to mix of it, each with the letters of the places that take it. */
export function mixPart({ plan }: StepSheetInput, look: SheetLook): SheetContent[] {
  const { scale } = look;
  return [
    stepPart(look, 'Mix'),
    {
      fontSize: 10.5 * scale,
      text: [{ text: 'Have ready: ', bold: true }, plan.batches.map(readyWords).join(' · ')],
      margin: [0, 0, 0, 1 * scale],
    },
    {
      layout: 'noBorders',
      fontSize: 10.5 * scale,
      table: {
        widths: [62 * scale, 150 * scale, '*', 'auto'],
        body: plannedMixtures(plan).map((mixture) => [
          figure(`${mlText(mixture.ml)} ml`, scale, 'right'),
          cell(mixture.name, scale, true),
          cell(mixture.parts.length > 1 ? partsWords(mixture.parts) : '', scale),
          cell(`for ${asWritten(mixture.letters.join(' '))}`, scale),
        ]),
      },
    },
  ];
}

function cell(text: string, scale: number, bold = false): SheetContent {
  return { text, bold, margin: [0, 4.8 * scale, 0, 0] };
}

function readyWords({ material, ml, drops, grams }: BatchNeed): string {
  const solid = grams === null ? '' : ` (holds ${Math.round(grams * 100) / 100} g of the solid)`;
  return `${mlText(ml)} ml ${material}${drops === undefined ? '' : ` (${drops} drops)`}${solid}`;
}

/** The make-up of one etch: `gum 20 + tannic solution 20`, `gum 30 + nitric acid 9 drops`, `gum 5, no drops`. */
export function partsWords(parts: readonly EtchPart[]): string {
  const given = parts.filter((part) => part.ml > 0);
  const words = given
    .map(({ material, ml, drops }) =>
      drops === undefined ? `${material} ${mlText(ml)}` : `${material} ${drops} drops`,
    )
    .join(' + ');
  return given.length < parts.length ? `${words}, no drops` : words;
}
