import type { Change, ComparisonRecord } from '../../../records/comparison.ts';
import { shareWords } from '../../../studio/proofs/coverageWords.ts';
import { hatchLegendSvg } from '../../charts/hatchLegend.ts';
import type { SheetContent } from '../pdfDocument.ts';
import { note } from '../sheetParts.ts';
import { columnGapPt, columnPt } from './pictureStrip.ts';

/** Large figures for what was lost, filled and scummed over the area, each with its hatch and meaning. */
export function areaFigures(record: ComparisonRecord): SheetContent {
  const { areas } = record;
  const localOnly = record.warnings.some((warning) => warning.code === 'scum-local-only');
  return {
    stack: [
      {
        columns: [
          figure('lost', areas.lostFraction),
          figure('filled', areas.filledFraction),
          figure('scum', areas.scumFraction),
        ],
        columnGap: columnGapPt,
      },
      note(areaNote(record, localOnly)),
    ],
    margin: [0, 2, 0, 0],
  };
}

function figure(change: Change, fraction: number | null) {
  const text = fraction === null ? 'not known' : shareWords(fraction);
  const legend = hatchLegendSvg({ changes: [change], width: 240, idPrefix: `area-${change}` });
  return {
    width: columnPt,
    stack: [
      { text, font: 'ArchivoNarrow', bold: true, fontSize: 24, lineHeight: 1 },
      { svg: legend, width: columnPt },
    ],
  };
}

function areaNote(record: ComparisonRecord, localOnly: boolean): string {
  const { covered } = record.areas;
  const [width, height] = record.parameters.sizeMm;
  const part =
    covered === null || covered >= 0.999 ? '' : `, of which the sheet covered ${shareWords(covered)}`;
  return (
    `Shares of the work rectangle, ${width} × ${height} mm${part}.` +
    (localOnly ? ' Scum counts patches only: an even tint cannot be told from the paper.' : '')
  );
}
