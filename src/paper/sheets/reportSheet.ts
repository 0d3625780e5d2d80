import type {
  HazardBalance,
  ReportBlock,
  ReportFigure,
  ReportLine,
  SetReport,
} from '../../records/setReport.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { notRecorded } from '../../studio/papers/paperWords.ts';
import { sourceWords } from '../../studio/papers/report/keptWords.ts';
import { figureText } from '../../studio/papers/report/reportWords.ts';
import { toneCurveSvg } from '../charts/toneCurve.ts';
import { toneLadderRowSvgs } from '../charts/toneLadder.ts';
import type { PicturesOfReport, ReportPictures } from '../documents/reportPictures.ts';
import { page, type SheetContent, sheetPdf } from './pdfDocument.ts';
import { plainTable } from './plainTable.ts';
import { headline, note, partName, picture, rule, stamp } from './sheetParts.ts';

type Figures = ReadonlyMap<string, ReportFigure>;

/** A report as a PDF on A4. Equal input gives equal bytes. */
export async function reportPdf(report: SetReport, pictures: PicturesOfReport): Promise<Uint8Array> {
  const figures: Figures = new Map(report.figures.map((figure) => [figure.name, figure]));
  const day = isoDayWords(report.setAt);
  return sheetPdf({
    title: report.title,
    createdAt: new Date(report.setAt),
    foot: `${report.title}. Figures filled from records on ${day}. ${report.engine}`,
    content: [
      stamp(report.reader === '' ? 'Report' : `Report for ${report.reader}`),
      headline(report.title),
      { text: `${report.period} · set on ${day}`, margin: [0, 0, 0, 4] },
      rule(1.5),
      ...(report.unknownFigures.length === 0
        ? []
        : [note(`No figure is called ${report.unknownFigures.map((name) => `{${name}}`).join(', ')}.`)]),
      ...report.parts.flatMap(({ name, blocks }) => [
        partName(name),
        ...blocks.flatMap((block) => blockContent(block, figures, pictures)),
      ]),
      partName('Where each figure is kept'),
      plainTable(
        [130, 70, '*'],
        report.figures.map((figure) => [figure.label, figureText(figure), sourceWords(figure)]),
        { fontSize: 7 },
      ),
    ],
  });
}

function blockContent(block: ReportBlock, figures: Figures, pictures: PicturesOfReport): SheetContent[] {
  switch (block.kind) {
    case 'words':
      return block.paragraphs.map((runs) => ({
        text: runs.map(({ text, figure }) => (figure === null ? { text } : { text, bold: true })),
        fontSize: 10,
        margin: [0, 0, 0, 5],
      }));
    case 'figures':
      return [figureRow(block.names.flatMap((name) => figures.get(name) ?? []))];
    case 'lines':
      return [
        { stack: [smallName(block.name), linesTable(block.lines)], unbreakable: block.lines.length < 14 },
      ];
    case 'comparison':
      return comparisonContent(block, pictures[block.id]);
    case 'balance':
      return balanceContent(block.rows, block.why, figures);
    case 'list':
      return [{ ul: [...block.items], margin: [0, 0, 0, 4] }];
    default:
      return block satisfies never;
  }
}

function smallName(text: string): SheetContent {
  return { text, bold: true, fontSize: 10, margin: [0, 6, 0, 2] };
}

/** How many figures stand side by side. */
const inRow = 5;

function figureRow(shown: readonly ReportFigure[]): SheetContent {
  const rows = Array.from({ length: Math.ceil(shown.length / inRow) }, (_, row) =>
    shown.slice(row * inRow, (row + 1) * inRow),
  );
  return {
    margin: [0, 2, 0, 4],
    stack: rows.map((figures) => ({
      margin: [0, 0, 0, 6] as [number, number, number, number],
      columns: Array.from({ length: inRow }, (_, index) => {
        const figure = figures[index];
        if (!figure) return { text: '', width: '*' };
        const size = figure.value === null ? 10 : 17;
        return {
          width: '*',
          stack: [
            { text: figureText(figure), font: 'ArchivoNarrow', bold: true, fontSize: size, lineHeight: 1 },
            { text: figure.label, fontSize: 8 },
          ],
        };
      }),
    })),
  };
}

function linesTable(lines: readonly ReportLine[]): SheetContent {
  return plainTable(
    [140, '*'],
    lines.map(({ label, value }) => [label, value ?? notRecorded]),
  );
}

function comparisonContent(
  { title, finding }: { readonly title: string; readonly finding: string | null },
  shown: ReportPictures | undefined,
): SheetContent[] {
  const half = (page.usablePt - 12) / 2;
  const pair = (
    [
      ['The stone', shown?.stone],
      ['The print, turned to lie as the stone does', shown?.proof],
    ] as const
  ).flatMap(([name, bytes]) =>
    bytes == null ? [] : [{ stack: [picture(bytes, 'jpeg', [half, 240]), note(name)], width: half }],
  );
  const record = shown?.record ?? null;
  return [
    {
      unbreakable: true,
      stack: [
        smallName(title),
        { text: finding ?? notRecorded, margin: [0, 0, 0, 4] },
        ...(pair.length === 0 ? [] : [{ columns: pair, columnGap: 12 }]),
      ],
    },
    ...(record === null
      ? []
      : [
          ...toneLadderRowSvgs(record, { width: 700 }).map(
            (svg): SheetContent => ({ svg, width: page.usablePt }),
          ),
          { svg: toneCurveSvg(record, { width: 700 }), width: page.usablePt } satisfies SheetContent,
        ]),
  ];
}

function balanceContent(
  rows: readonly HazardBalance[],
  why: readonly string[],
  figures: Figures,
): SheetContent[] {
  const told = (name: string) => {
    const figure = figures.get(name);
    return figure ? figureText(figure) : notRecorded;
  };
  return [
    smallName('By hazard class'),
    ...(rows.length === 0
      ? []
      : [
          plainTable(
            ['*', 90, 90, 90],
            rows.map(({ words, before, now, less }) => [words, told(before), told(now), told(less)]),
            { head: ['', 'before', 'now', 'less by'] },
          ),
        ]),
    ...why.map((reason) => note(`${reason}.`)),
  ];
}
