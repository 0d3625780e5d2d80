import { asWritten, shownLength } from '../../words/asWritten.ts';
import { textInWords } from '../../words/inWords.ts';
import { page, type SheetContent } from './pdfDocument.ts';

const soft = '#4d463d';

/** A rule across the page. */
export function rule(thickness = 1, margin: [number, number, number, number] = [0, 4, 0, 6]): SheetContent {
  return {
    canvas: [
      { type: 'line', x1: 0, y1: 0, x2: page.usablePt, y2: 0, lineWidth: thickness, lineColor: '#1a1714' },
    ],
    margin,
  };
}

/** The small line above a headline: what this sheet is about. */
export function stamp(text: string): SheetContent {
  return { text, fontSize: 9, bold: true, color: soft, margin: [0, 0, 0, 2] };
}

/** How many letters at which size, in points, stand on one line (the first two) or on two full ones. */
const headlineSizes = [
  { letters: 43, size: 28 },
  { letters: 52, size: 23 },
  { letters: 78, size: 26 },
  { letters: 90, size: 23 },
  { letters: 116, size: 20 },
  { letters: 138, size: 18 },
] as const;

/** The headline of a sheet: its finding, or its name. Long ones are set smaller, so that they seldom end in a line of one word. */
export function headline(words: string): SheetContent {
  const text = asWritten(textInWords(words));
  const fontSize = headlineSizes.find(({ letters }) => shownLength(text) <= letters)?.size ?? 20;
  return { text, font: 'ArchivoNarrow', bold: true, fontSize, lineHeight: 0.92, margin: [0, 0, 0, 6] };
}

/**
 * The name of a part of a sheet, above a thin rule. `movesOn` lets it go over to the next page by itself when
 * it would stand alone at a foot; not inside a stack that is kept together anyway.
 */
export function partName(text: string, movesOn = true): SheetContent {
  return {
    stack: [{ text, font: 'ArchivoNarrow', bold: true, fontSize: 13 }, rule(0.75, [0, 1, 0, 4])],
    margin: [0, 6, 0, 0],
    ...(movesOn ? { headlineLevel: 1 } : {}),
  };
}

/** A paragraph of ordinary text. */
export function paragraph(text: string): SheetContent {
  return { text, margin: [0, 0, 0, 4] };
}

/** Smaller, softer text under a picture or a table. */
export function note(text: string): SheetContent {
  return { text, fontSize: 8, color: soft, margin: [0, 2, 0, 0] };
}

/** A picture as a data address, kept inside a box given in points. */
export function picture(
  bytes: Uint8Array,
  kind: 'jpeg' | 'png',
  fitPt: readonly [number, number],
): SheetContent {
  return { image: `data:image/${kind};base64,${Buffer.from(bytes).toString('base64')}`, fit: [...fitPt] };
}
