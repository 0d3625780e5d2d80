import type { SheetContent, SheetText } from '../pdfDocument.ts';
import type { SheetLook } from './stepSheetInput.ts';

const ink = '#1a1714';

/** The name of a part of the sheet under a rule, and at its right how the part is known to be done. */
export function stepPart(look: SheetLook, name: string, sign: string | null = null): SheetContent {
  const { scale, widthPt } = look;
  return {
    margin: [0, 7 * scale, 0, 2 * scale],
    stack: [
      { canvas: [{ type: 'line', x1: 0, y1: 0, x2: widthPt, y2: 0, lineWidth: 1.2, lineColor: ink }] },
      {
        margin: [0, 2 * scale, 0, 0],
        columns: [
          { text: name, font: 'ArchivoNarrow', bold: true, fontSize: 14 * scale, width: 'auto' },
          ...(sign === null
            ? []
            : [
                {
                  text: [{ text: 'Sign: ', bold: true }, sign],
                  fontSize: 10 * scale,
                  alignment: 'right' as const,
                  margin: [0, 3 * scale, 0, 0] as [number, number, number, number],
                },
              ]),
        ],
      },
    ],
  };
}

/** A figure to be read at arm's length. */
export function figure(text: string, scale: number, alignment: 'left' | 'right' = 'left'): SheetText {
  return {
    text,
    font: 'ArchivoNarrow',
    bold: true,
    fontSize: 15 * scale,
    lineHeight: 1,
    alignment,
    noWrap: true,
  };
}

/** The small name above a column. */
export function columnName(text: string, scale: number, right = false): SheetContent {
  return { text, fontSize: 8.5 * scale, ...(right ? { alignment: 'right' as const } : {}) };
}

/** Millilitres as they are measured: to a tenth, below one to a hundredth, no needless noughts. */
export function mlText(ml: number): string {
  return String(ml < 1 ? Math.round(ml * 100) / 100 : Math.round(ml * 10) / 10);
}
