import { findingSentence } from '../../studio/proofs/comparisonWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import { toneCurveSvg } from '../charts/toneCurve.ts';
import { toneLadderRowSvgs } from '../charts/toneLadder.ts';
import { areaFigures } from './comparison/areaFigures.ts';
import { caveats, howMeasured, notKnown } from './comparison/howMeasured.ts';
import { photographStrip, pictureStrip } from './comparison/pictureStrip.ts';
import { refusedPage } from './comparison/refusedPage.ts';
import type { ComparisonSheetInput } from './comparison/sheetInput.ts';
import { warningList } from './comparison/warningList.ts';
import { zoneTable } from './comparison/zoneTable.ts';
import { page, type SheetContent, sheetPdf } from './pdfDocument.ts';
import { headline, paragraph, partName, rule, stamp } from './sheetParts.ts';

/** As many as the two pages that are meant hold. */
const usualZones = 20;

/**
 * The comparison as a PDF to pin up: the finding, stone and print and what became of it, the tone ladder;
 * then curves, every zone, warnings with what to do, how it was measured and what it cannot say. A refused
 * record gives one page that says why. More zones flow onto further pages. Equal input gives equal bytes.
 */
export async function comparisonSheetPdf(input: ComparisonSheetInput): Promise<Uint8Array> {
  const { record } = input;
  const title = asWritten(input.title);
  return sheetPdf({
    title: `${title}: stone against print`,
    createdAt: input.createdAt,
    ...(record.zones.length <= usualZones
      ? { pages: record.zones.length === 0 || record.verdict !== 'ok' ? 1 : 2 }
      : {}),
    foot: `${title}, ${input.dateText}. ${asWritten(record.engine)}`,
    content: [
      stamp(`Stone against print · ${title} · ${input.dateText}`),
      headline(findingSentence(record)),
      rule(1.5),
      ...(record.verdict === 'ok'
        ? measuredPages(input)
        : [...photographs(input), ...refusedPage(record, record.verdict), ...warningList(record)]),
    ],
  });
}

function measuredPages(input: ComparisonSheetInput): readonly SheetContent[] {
  const { record } = input;
  return [
    ...pictures(input),
    areaFigures(record),
    ...ladder(input),
    ...curves(input),
    ...zoneTable(record),
    ...warningList(record),
    ...methodPart(input),
  ];
}

function pictures(input: ComparisonSheetInput): readonly SheetContent[] {
  return input.pictures === null ? [] : [pictureStrip(input.pictures)];
}

function photographs(input: ComparisonSheetInput): readonly SheetContent[] {
  return input.pictures === null ? [] : [photographStrip(input.pictures)];
}

function ladder({ record }: ComparisonSheetInput): readonly SheetContent[] {
  const rows = toneLadderRowSvgs(record, { width: 700 });
  if (rows.length === 0)
    return [partName('Tone ladder'), paragraph('No zones were drawn, so there are no steps.')];
  return [
    partName('Tone ladder: drawn above, printed below, in their own greys'),
    ...rows.map((svg): SheetContent => ({ svg, width: page.usablePt, margin: [0, 0, 0, 2] })),
  ];
}

function curves({ record }: ComparisonSheetInput): readonly SheetContent[] {
  if (record.toneCurves.length === 0) return [];
  return [
    {
      stack: [
        partName('Tone curves', false),
        { svg: toneCurveSvg(record, { width: 700 }), width: page.usablePt },
      ],
      unbreakable: true,
    },
  ];
}

function methodPart({ record }: ComparisonSheetInput): readonly SheetContent[] {
  return [
    partName('How it was measured'),
    ...[...howMeasured(record), ...notKnown(record)].map(
      ([term, text]): SheetContent => ({
        columns: [{ text: term, bold: true, width: 84 }, { text }],
        fontSize: 8,
        margin: [0, 0, 0, 1],
      }),
    ),
    {
      unbreakable: true,
      stack: [partName('Before you trust a figure', false), { ul: [...caveats], fontSize: 8 }],
    },
  ];
}
