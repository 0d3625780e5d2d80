import type { ComparisonRecord, CoverageInterval, ZoneResult } from '../../../records/comparison.ts';
import { changeWord } from '../../../studio/proofs/changeWords.ts';
import { coverageFigure } from '../../../studio/proofs/coverageWords.ts';
import { asWritten } from '../../../words/asWritten.ts';
import { chartInk } from '../../charts/chartInk.ts';
import { hatchedRectangleSvg } from '../../charts/hatching.ts';
import type { SheetContent } from '../pdfDocument.ts';
import { note, partName } from '../sheetParts.ts';

/** Every zone with drawn and printed coverage in per cent, its 95 % interval, and the change. */
export function zoneTable(record: ComparisonRecord): readonly SheetContent[] {
  if (record.zones.length === 0) return [];
  const head = ['', 'zone', 'medium', 'drawn %', 'printed %', '', 'change'].map((text, column) => ({
    text,
    bold: true,
    color: chartInk.soft,
    alignment: column === 3 || column === 4 ? ('right' as const) : ('left' as const),
  }));
  const rows = record.zones.map((zone, index) => [
    { text: asWritten(zone.id), bold: true },
    asWritten(zone.name),
    zone.medium,
    toneCell(zone.drawn),
    toneCell(zone.printed),
    hatchCell(zone, index),
    { text: changeText(zone), bold: zone.change !== 'held' },
  ]);
  return [
    partName('Zone by zone'),
    {
      table: {
        headerRows: 1,
        dontBreakRows: true,
        widths: ['auto', '*', 98, 54, 54, 24, 102],
        body: [head, ...rows],
      },
      fontSize: 8.5,
      layout: {
        hLineWidth: (line: number) => (line === 1 ? 0.75 : line === 0 ? 0 : 0.25),
        hLineColor: () => chartInk.rule,
        vLineWidth: () => 0,
        paddingTop: () => 0.5,
        paddingBottom: () => 0,
        paddingLeft: () => 0,
        paddingRight: () => 8,
      },
    },
    note(
      'Coverage: 100 % is a full film; the truth lies within ±, 19 times of 20. Drawn over the whole zone, printed where the sheet covers it.',
    ),
  ];
}

function toneCell(tone: CoverageInterval | null): SheetContent {
  const figure = coverageFigure(tone);
  if (figure === null) return { text: 'not known', alignment: 'right', color: chartInk.soft };
  return {
    text: [
      { text: figure.value, bold: true },
      { text: ` ${figure.plusMinus}`, color: chartInk.soft, fontSize: 8 },
    ],
    alignment: 'right',
  };
}

function hatchCell(zone: ZoneResult, index: number): SheetContent {
  if (zone.change === 'held' || zone.printed === null) return '';
  const box = { x: 0.5, y: 0.5, width: 31, height: 11 };
  const mark = hatchedRectangleSvg(zone.change, box, chartInk.ink, `row-${index}`);
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" width="32" height="12" viewBox="0 0 32 12">${mark}</svg>`,
    width: 18,
    margin: [0, 1.4, 0, 0],
  };
}

function changeText(zone: ZoneResult): string {
  if (zone.covered < 0.05) return 'off the sheet';
  const word = changeWord(zone.change);
  return zone.covered < 0.98 ? `${word}, ${Math.round(100 * zone.covered)} % seen` : word;
}
