import type { DocumentationLine, EditionDocumentation } from '../../records/documentation.ts';
import type { Paper } from '../../records/paper.ts';
import { asWritten } from '../../words/asWritten.ts';
import { fittedSheetPdf, type SheetContent } from './pdfDocument.ts';
import { stepPart } from './step/stepParts.ts';
import type { SheetLook } from './step/stepSheetInput.ts';

export interface EditionSheetInput {
  readonly documentation: EditionDocumentation;
  readonly paper: Paper;
  /** The day of printing the sheet as people read it. */
  readonly dateText: string;
  /** Kept in the file's own data; the same date and input give the same bytes. */
  readonly createdAt: Date;
}

/**
 * The documentation sheet of an edition: what the trade records, from what is kept. What isn't kept is a blank line to
 * write on. Equal input gives equal bytes.
 */
export async function editionSheetPdf(input: EditionSheetInput): Promise<Uint8Array> {
  const { documentation, paper, createdAt, dateText } = input;
  const { title, parts, open } = documentation;
  return fittedSheetPdf({
    title: `${asWritten(title)}: documentation of the edition`,
    createdAt,
    paper,
    foot: `${asWritten(title)} · from the studio’s records · a blank line was not recorded`,
    content: (scale, widthPt) => {
      const look = { scale, widthPt };
      return [
        {
          columns: [
            { text: 'Documentation of an edition', bold: true, fontSize: 10 * scale, width: '*' },
            { text: dateText, fontSize: 10 * scale, alignment: 'right', width: 'auto', noWrap: true },
          ],
        },
        {
          text: asWritten(title),
          font: 'ArchivoNarrow',
          bold: true,
          fontSize: 26 * scale,
          lineHeight: 1,
          margin: [0, 2 * scale, 0, 2 * scale],
        },
        ...(open.length === 0
          ? []
          : [{ text: ['Still open: ', open.join(' ')], fontSize: 9.5 * scale } satisfies SheetContent]),
        ...parts.flatMap(({ name, lines }) => [stepPart(look, name), linesTable(lines, look)]),
        signatureLines(look),
      ];
    },
  });
}

function linesTable(lines: readonly DocumentationLine[], { scale }: SheetLook): SheetContent {
  return {
    table: {
      widths: ['32%', '*'],
      body: lines.map(({ label, value, from }) => [
        { text: label, color: '#4d463d', margin: [0, 2 * scale, 0, 0] },
        {
          text: value === null ? ' ' : isTyped(from) ? asWritten(value) : value,
          bold: value !== null,
          margin: [0, 2 * scale, 0, 0],
        },
      ]),
    },
    fontSize: 10 * scale,
    layout: {
      hLineWidth: (row: number) => (row === 0 ? 0 : 0.5),
      hLineColor: () => '#8b806e',
      vLineWidth: () => 0,
      paddingTop: () => 0.5 * scale,
      paddingBottom: () => 0.5 * scale,
      paddingLeft: () => 0,
      paddingRight: () => 6,
    },
  };
}

/** What the edition, the work or the stone was given in somebody's words, a day apart. */
function isTyped(from: DocumentationLine['from']): boolean {
  return from.some(({ field }) => typed.has(field));
}

const typed = new Set([
  'title',
  'artist',
  'printer',
  'name',
  'colour',
  'drawingMaterials',
  'etches',
  'ink',
  'press',
  'approvedBy',
  'signature',
  'chop',
  'cancellation',
  'note',
]);

/** Signing by hand is for the people who made it. */
function signatureLines({ scale, widthPt }: SheetLook): SheetContent {
  const half = (widthPt - 24 * scale) / 2;
  const line = (x: number) => ({
    type: 'line' as const,
    x1: x,
    y1: 0,
    x2: x + half,
    y2: 0,
    lineWidth: 0.75,
  });
  return {
    margin: [0, 34 * scale, 0, 0],
    stack: [
      { canvas: [line(0), line(half + 24 * scale)] },
      {
        columns: [
          { text: 'artist, date', width: half + 24 * scale },
          { text: 'printer, date', width: half },
        ],
        fontSize: 8.5 * scale,
      },
    ],
    unbreakable: true,
  };
}
