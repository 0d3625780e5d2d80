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
import {
  figureSources,
  figureText,
  gapsLead,
  missingFigures,
} from '../../studio/papers/report/reportWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import { reportInWords } from '../../words/reportInWords.ts';
import { toneCurveSvg } from '../charts/toneCurve.ts';
import { toneLadderRowSvgs } from '../charts/toneLadder.ts';
import type { PicturesOfReport, ReportPictures } from '../documents/reportPictures.ts';
import { page, type SheetContent, sheetPdf } from './pdfDocument.ts';
import { plainTable } from './plainTable.ts';
import { headline, note, partName, picture, rule, stamp } from './sheetParts.ts';

type Figures = ReadonlyMap<string, ReportFigure>;

/** A report as a PDF on A4. Equal input gives equal bytes. */
export async function reportPdf(kept: SetReport, pictures: PicturesOfReport): Promise<Uint8Array> {
  const report = reportInWords(kept, asWritten);
  const figures: Figures = new Map(report.figures.map((figure) => [figure.name, figure]));
  const day = isoDayWords(report.setAt);
  return sheetPdf({
    title: report.title,
    createdAt: new Date(report.setAt),
    foot: `${report.title}. Figures filled from records on ${day}. ${asWritten(report.engine)}`,
    content: [
      stamp(report.reader === '' ? 'Report' : `Report for ${report.reader}`),
      headline(report.title),
      { text: `${report.period} · set on ${day}`, margin: [0, 0, 0, 4] },
      rule(1.5),
      ...(report.unknownFigures.length === 0 ? [] : [note(missingFigures(report.unknownFigures))]),
      ...report.parts.flatMap(({ name, blocks }) => [
        partName(name),
        ...blocks.flatMap((block) => blockContent(block, figures, pictures)),
      ]),
      partName(figureSources),
      plainTable(
        [130, 70, '*'],
        report.figures.map((figure) => [
          figure.label,
          figureText(figure),
          sourceWords(figure, report.figures),
        ]),
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
      return [figureTable(block.names.flatMap((name) => figures.get(name) ?? []))];
    case 'lines':
      return [
        { stack: [smallName(block.name), linesTable(block.lines)], unbreakable: block.lines.length < 14 },
      ];
    case 'comparison':
      return comparisonContent(block, pictures[block.id]);
    case 'balance':
      return balanceContent(block.rows, block.why, figures);
    case 'gaps':
      return [
        { text: gapsLead, margin: [0, 0, 0, 4] },
        plainTable(
          [140, '*'],
          block.groups.map(({ name, items }) => [name, items.join('; ')]),
        ),
      ];
    default:
      return block satisfies never;
  }
}

function smallName(text: string): SheetContent {
  return { text, bold: true, fontSize: 10, margin: [0, 6, 0, 2] };
}

function figureTable(shown: readonly ReportFigure[]): SheetContent {
  return plainTable(
    ['*', 140],
    shown.map((figure) => [figure.label, figureText(figure)]),
  );
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
