import {
  AlignmentType,
  Document,
  HeadingLevel,
  ImageRun,
  Packer,
  Paragraph,
  Table,
  TableCell,
  TableRow,
  TextRun,
  WidthType,
} from 'docx';
import type { HazardBalance, ReportBlock, ReportFigure, SetReport } from '../../records/setReport.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { notRecorded } from '../../studio/papers/paperWords.ts';
import { sourceWords } from '../../studio/papers/report/keptWords.ts';
import {
  figureSources,
  figureText,
  filledFrom,
  gapsLead,
  missingFigures,
} from '../../studio/papers/report/reportWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import { svgInWords, textInWords } from '../../words/inWords.ts';
import { reportInWords } from '../../words/reportInWords.ts';
import { toneCurveSvg } from '../charts/toneCurve.ts';
import { toneLadderSvg } from '../charts/toneLadder.ts';
import { jpegSize } from './jpegSize.ts';
import type { PicturesOfReport, ReportPictures } from './reportPictures.ts';

type Block = Paragraph | Table;
type Figures = ReadonlyMap<string, ReportFigure>;
/** Draws an SVG as a PNG of a width in px. */
type Draw = (svg: string, widthPx: number) => Promise<Uint8Array>;

/** What a page of A4 takes between its margins, px at 96 to the inch. */
const usablePx = 600;

/** A report as a file for word processors (Office Open XML, ECMA-376), to be worked on further. */
export async function reportDocx(
  kept: SetReport,
  pictures: PicturesOfReport,
  draw: Draw,
): Promise<Uint8Array> {
  const report = reportInWords(kept, (words) => words);
  const figures: Figures = new Map(report.figures.map((figure) => [figure.name, figure]));
  const children: Block[] = [
    new Paragraph({ text: report.title, heading: HeadingLevel.TITLE }),
    new Paragraph(
      [
        textInWords(report.reader === '' ? 'Report' : `Report for ${asWritten(report.reader)}`),
        report.period,
        textInWords(`set on ${isoDayWords(report.setAt)}`),
      ].join(' · '),
    ),
  ];
  if (report.unknownFigures.length > 0)
    children.push(new Paragraph(textInWords(missingFigures(report.unknownFigures))));
  for (const { name, blocks } of report.parts) {
    children.push(new Paragraph({ text: name, heading: HeadingLevel.HEADING_1 }));
    for (const block of blocks) children.push(...(await blockOf(block, figures, pictures, draw)));
  }
  children.push(
    new Paragraph({ text: textInWords(figureSources), heading: HeadingLevel.HEADING_1 }),
    table(
      report.figures.map((figure) => [
        figure.label,
        textInWords(figureText(figure)),
        textInWords(sourceWords(figure, report.figures)),
      ]),
    ),
  );
  children.push(new Paragraph(textInWords(filledFrom(report.setAt))));
  const document = new Document({
    title: report.title,
    creator: 'Stonetone',
    styles: { default: { document: { run: { font: 'Arial', size: 21 } } } },
    sections: [{ children }],
  });
  return new Uint8Array(await Packer.toBuffer(document));
}

async function blockOf(
  block: ReportBlock,
  figures: Figures,
  pictures: PicturesOfReport,
  draw: Draw,
): Promise<Block[]> {
  switch (block.kind) {
    case 'words':
      return block.paragraphs.map(
        (runs) =>
          new Paragraph({
            children: runs.map(({ text, figure }) => new TextRun({ text, bold: figure !== null })),
            spacing: { after: 120 },
          }),
      );
    case 'figures':
      return [
        table(
          block.names
            .flatMap((name) => figures.get(name) ?? [])
            .map((figure) => [figure.label, textInWords(figureText(figure))]),
        ),
      ];
    case 'lines':
      return [
        named(block.name),
        table(block.lines.map(({ label, value }) => [label, value ?? textInWords(notRecorded)])),
      ];
    case 'comparison':
      return [
        named(block.title),
        new Paragraph(block.finding ?? textInWords(notRecorded)),
        ...(await picturesOf(pictures[block.id], draw)),
      ];
    case 'balance':
      return [
        named(textInWords('By hazard class')),
        ...balance(block.rows, figures),
        ...block.why.map((why) => new Paragraph(`${why}.`)),
      ];
    case 'gaps':
      return [
        new Paragraph(textInWords(gapsLead)),
        table(block.groups.map(({ name, items }) => [name, items.join('; ')])),
      ];
    default:
      return block satisfies never;
  }
}

function named(text: string): Paragraph {
  return new Paragraph({ text, heading: HeadingLevel.HEADING_2 });
}

function balance(rows: readonly HazardBalance[], figures: Figures): Block[] {
  if (rows.length === 0) return [];
  const told = (name: string) => {
    const figure = figures.get(name);
    return textInWords(figure ? figureText(figure) : notRecorded);
  };
  return [
    table([
      ['', 'before', 'now', 'less by'].map(textInWords),
      ...rows.map(({ words, before, now, less }) => [words, told(before), told(now), told(less)]),
    ]),
  ];
}

async function picturesOf(shown: ReportPictures | undefined, draw: Draw): Promise<Paragraph[]> {
  const paragraphs: Paragraph[] = [];
  const add = (data: Uint8Array, type: 'jpg' | 'png', width: number, height: number, name: string) =>
    paragraphs.push(
      new Paragraph({
        alignment: AlignmentType.LEFT,
        children: [
          new ImageRun({
            type,
            data: Buffer.from(data),
            transformation: { width, height },
            altText: { name, title: name, description: name },
          }),
        ],
      }),
      new Paragraph({ children: [new TextRun({ text: name, size: 18 })] }),
    );
  for (const [name, bytes] of [
    [textInWords('The stone'), shown?.stone],
    [textInWords('The print, turned to lie as the stone does'), shown?.proof],
  ] as const) {
    const size = bytes ? jpegSize(bytes) : null;
    if (bytes && size) {
      const width = usablePx / 2;
      add(bytes, 'jpg', width, (width * size.heightPx) / size.widthPx, name);
    }
  }
  if (shown?.record) {
    for (const [name, svg] of [
      [textInWords('Tone ladder'), svgInWords(toneLadderSvg(shown.record))],
      [textInWords('Tone curves'), svgInWords(toneCurveSvg(shown.record))],
    ] as const) {
      const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!.map(Number);
      const drawn = await draw(svg, 2 * usablePx);
      add(drawn, 'png', usablePx, (usablePx * height!) / width!, name);
    }
  }
  return paragraphs;
}

/** What a page of A4 takes between its margins, twentieths of a point. */
const usableTwips = 9026;

/** How much of it each column takes, by how many there are: a name, then what is told of it. */
const columnShares: Readonly<Record<number, readonly number[]>> = {
  2: [0.3, 0.7],
  3: [0.32, 0.2, 0.48],
  4: [0.4, 0.2, 0.2, 0.2],
};

function table(rows: readonly (readonly string[])[]): Block {
  if (rows.length === 0) return new Paragraph('');
  const columns = rows[0]!.length;
  const shares = columnShares[columns] ?? Array.from({ length: columns }, () => 1 / columns);
  return new Table({
    width: { size: 100, type: WidthType.PERCENTAGE },
    // word processors that don't fit columns to their words would make them all alike
    columnWidths: shares.map((share) => Math.round(share * usableTwips)),
    rows: rows.map(
      (cells) =>
        new TableRow({ children: cells.map((text) => new TableCell({ children: [new Paragraph(text)] })) }),
    ),
  });
}
