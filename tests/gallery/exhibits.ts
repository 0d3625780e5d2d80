import { readFileSync } from 'node:fs';
import { editionDriftSvg } from '../../src/paper/charts/editionDrift.ts';
import { etchMapSvg } from '../../src/paper/charts/etchMap.ts';
import { hatchLegendSvg } from '../../src/paper/charts/hatchLegend.ts';
import { tearDownSvg } from '../../src/paper/charts/tearDown.ts';
import { toneCurveSvg } from '../../src/paper/charts/toneCurve.ts';
import { toneLadderSvg } from '../../src/paper/charts/toneLadder.ts';
import { toneLinesSvg } from '../../src/paper/charts/toneLines.ts';
import { comparisonSheetPdf } from '../../src/paper/sheets/comparisonSheet.ts';
import { editionSheetPdf } from '../../src/paper/sheets/editionSheet.ts';
import { etchMapPdf } from '../../src/paper/sheets/etchMapSheet.ts';
import { hatchScaleSheetPdf } from '../../src/paper/sheets/hatchScaleSheet.ts';
import { protocolSheetPdf } from '../../src/paper/sheets/protocolSheet.ts';
import { roomCardPdf } from '../../src/paper/sheets/roomCards.ts';
import { stepSheetPdf } from '../../src/paper/sheets/stepSheet.ts';
import { trialTracingPdf } from '../../src/paper/sheets/trialTracingSheet.ts';
import { weekSheetPdf } from '../../src/paper/sheets/weekSheet.ts';
import type { ComparisonRecord } from '../../src/records/comparison.ts';
import type { Paper } from '../../src/records/paper.ts';
import type { ChartExhibit, SheetExhibit } from './exhibit.ts';
import { paperSheets } from './paperExhibits.ts';
import { documentations, drifts, tearDowns } from './records/editions.ts';
import {
  cannotBeKept,
  lightBesideSolid,
  lowWaterPlan,
  splitSky,
  twelveAcid,
  twelveZones,
} from './records/etchPlans.ts';
import { lowWater } from './records/lowWater.ts';
import { manyZones } from './records/manyZones.ts';
import { shelf, washoutCard } from './records/materials.ts';
import { noMatch, unmirrored } from './records/refused.ts';
import { eyeSeries, firstPull, settlingSeries, unreadSeries } from './records/series.ts';
import { etchesByMedium } from './records/trial.ts';
import { fullWeek, quietWeek } from './records/week.ts';
import { noZones, partial } from './records/withGaps.ts';

const phoneWidth = 340;
const day = { dateText: '26 Nov 2026', createdAt: new Date('2026-11-26T09:40:00Z') };

export const charts: readonly ChartExhibit[] = [
  { name: 'tone-ladder', svg: () => toneLadderSvg(lowWater) },
  { name: 'tone-ladder-phone', svg: () => toneLadderSvg(lowWater, { width: phoneWidth }) },
  { name: 'tone-ladder-gaps', svg: () => toneLadderSvg(partial) },
  { name: 'tone-ladder-no-zones', svg: () => toneLadderSvg(noZones) },
  { name: 'tone-ladder-many-zones', svg: () => toneLadderSvg(manyZones) },
  { name: 'tone-curve', svg: () => toneCurveSvg(lowWater) },
  { name: 'tone-curve-phone', svg: () => toneCurveSvg(lowWater, { width: phoneWidth }) },
  { name: 'tone-curve-none', svg: () => toneCurveSvg(noZones) },
  { name: 'tone-lines', svg: () => toneLinesSvg(settlingSeries) },
  { name: 'tone-lines-phone', svg: () => toneLinesSvg(settlingSeries, { width: phoneWidth }) },
  { name: 'tone-lines-eye', svg: () => toneLinesSvg(eyeSeries) },
  { name: 'tone-lines-first', svg: () => toneLinesSvg(firstPull, { width: phoneWidth }) },
  { name: 'tone-lines-none', svg: () => toneLinesSvg(unreadSeries) },
  { name: 'hatch-legend', svg: () => hatchLegendSvg() },
  { name: 'etch-map', svg: () => etchMapSvg(lowWaterPlan, { reduction: 2 }) },
  { name: 'etch-map-mirrored', svg: () => etchMapSvg(lowWaterPlan, { reduction: 2, mirrored: true }) },
  { name: 'tear-down', svg: () => tearDownSvg(tearDowns.plain) },
  { name: 'tear-down-short-grain', svg: () => tearDownSvg(tearDowns.short) },
  { name: 'tear-down-grain-not-known', svg: () => tearDownSvg(tearDowns.unknown, { width: phoneWidth }) },
  { name: 'tear-down-none', svg: () => tearDownSvg(tearDowns.none) },
  { name: 'edition-drift', svg: () => editionDriftSvg(drifts.chart) },
  { name: 'edition-drift-phone', svg: () => editionDriftSvg(drifts.chart, { width: phoneWidth }) },
  { name: 'edition-drift-few', svg: () => editionDriftSvg(drifts.few) },
  { name: 'edition-drift-none', svg: () => editionDriftSvg(drifts.none) },
];

export const sheets: readonly SheetExhibit[] = [
  comparison('sheet-low-water', lowWater, 2),
  comparison('sheet-gaps', partial, 2),
  comparison('sheet-no-zones', noZones, 1),
  comparison('sheet-many-zones', manyZones, 5),
  comparison('sheet-unmirrored', unmirrored, 1),
  comparison('sheet-no-match', noMatch, 1),
  {
    name: 'sheet-no-pictures',
    pages: 1,
    pdf: () =>
      comparisonSheetPdf({
        record: unmirrored,
        title: 'Low Water, pull 4',
        ...day,
        pictures: null,
      }),
  },
  { name: 'sheet-hatch-scale', pages: 1, pdf: () => hatchScaleSheetPdf(day.createdAt) },
  { name: 'sheet-protocol', pages: 1, pdf: () => protocolSheetPdf(day.createdAt) },
  etchMap('map-low-water', lowWaterPlan, 'a4', 13),
  etchMap('map-split-wash', splitSky, 'a3', 9),
  steps('steps-low-water', lowWaterPlan, 'a4'),
  steps('steps-light-beside-solid', lightBesideSolid, 'letter'),
  steps('steps-twelve-zones', twelveZones, 'letter'),
  steps('steps-split-wash', splitSky, 'a3'),
  steps('steps-not-kept', cannotBeKept, 'a4'),
  steps('steps-not-known', twelveAcid, 'a4'),
  { name: 'week-full', pages: 1, pdf: () => weekSheetPdf({ week: fullWeek, paper: 'a4' }) },
  { name: 'week-quiet', pages: 1, pdf: () => weekSheetPdf({ week: quietWeek, paper: 'letter' }) },
  {
    name: 'trial-tracing',
    pages: 8,
    pdf: () => trialTracingPdf({ design: etchesByMedium, paper: 'a4', ...day }),
  },
  {
    name: 'card-door',
    pages: 1,
    pdf: () => roomCardPdf({ card: 'door', materials: shelf, at: day.createdAt.toISOString(), paper: 'a4' }),
  },
  {
    name: 'card-door-empty',
    pages: 1,
    pdf: () => roomCardPdf({ card: 'door', materials: [], at: day.createdAt.toISOString(), paper: 'letter' }),
  },
  { name: 'card-start-washout', pages: 1, pdf: () => roomCardPdf(washoutCard) },
  edition('edition-printed', 'printed', 'a4'),
  edition('edition-planned', 'planned', 'letter'),
  ...paperSheets,
];

type Planned = typeof lowWaterPlan;

function etchMap(name: string, planned: Planned, paper: Paper, pages: number): SheetExhibit {
  const { createdAt } = day;
  return {
    name,
    pages,
    pdf: () => etchMapPdf({ ...planned, title: 'Low Water, stone S-01', paper, createdAt }),
  };
}

function edition(name: string, which: keyof typeof documentations, paper: Paper): SheetExhibit {
  return {
    name,
    pages: 1,
    pdf: () => editionSheetPdf({ documentation: documentations[which], paper, ...day }),
  };
}

function steps(name: string, planned: Planned, paper: Paper): SheetExhibit {
  return {
    name,
    pages: 1,
    pdf: () => stepSheetPdf({ ...planned, ...day, title: 'Low Water, stone S-01', paper }),
  };
}

function comparison(name: string, record: ComparisonRecord, pages: number): SheetExhibit {
  const read = (file: string) => readFileSync(new URL(`pictures/${file}`, import.meta.url));
  return {
    name,
    pages,
    pdf: () =>
      comparisonSheetPdf({
        record,
        title: 'Low Water, pull 4',
        ...day,
        pictures: {
          stone: read('stone.jpg'),
          proof: read('proof.jpg'),
          overlay: record.maps === null ? null : read('overlay.png'),
        },
      }),
  };
}
