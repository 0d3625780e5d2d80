import { asWritten } from '../../../words/asWritten.ts';
import { ptPerMm, type SheetContent } from '../pdfDocument.ts';

/** Length of the check ruler in millimetres, from the outer edge of its first line to that of its last. */
export const checkRulerMm = 100;

/** A ruler of 100 mm true to size, with lines each millimetre, to lay a real ruler against after printing. */
export function checkRuler(): SheetContent {
  const lineWidth = 0.2 * ptPerMm;
  const length = checkRulerMm * ptPerMm;
  const lines = Array.from({ length: checkRulerMm + 1 }, (_, mm) => {
    const height = mm % 10 === 0 ? 6 : mm % 5 === 0 ? 4.5 : 3;
    const x = lineWidth / 2 + (mm / checkRulerMm) * (length - lineWidth);
    return {
      type: 'line' as const,
      x1: x,
      y1: 0,
      x2: x,
      y2: height * ptPerMm,
      lineWidth,
      lineColor: '#000000',
    };
  });
  return {
    stack: [
      {
        canvas: [
          ...lines,
          { type: 'line', x1: 0, y1: 0, x2: length, y2: 0, lineWidth, lineColor: '#000000' },
        ],
      },
      {
        columns: ['0', '50 mm', '100 mm'].map((text, index) => ({
          text: asWritten(text),
          width: length / 3,
          fontSize: 8,
          alignment: (['left', 'center', 'right'] as const)[index]!,
        })),
        columnGap: 0,
      },
    ],
    margin: [0, 2, 0, 2],
  };
}

/** What to do with the ruler: its length is that of the sheet, in millimetres whatever the sheet is written in. */
export function checkRulerNote(): string {
  const length = asWritten(`${checkRulerMm} mm`);
  return `Lay a steel ruler against it: it must measure ${length}. If it does not, print again at full size.`;
}
