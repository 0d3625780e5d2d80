import type { EditionDocumentation } from '../../../src/records/documentation.ts';
import type { EditionDraft } from '../../../src/records/edition.ts';
import type { LedgerEntry } from '../../../src/records/ledger.ts';
import type { WorkEntry } from '../../../src/records/workEntry.ts';
import { documentationOf } from '../../../src/studio/editions/documentation.ts';
import { type EditionPull, editionDrift, type ToneDrift } from '../../../src/studio/editions/drift.ts';
import { planEdition } from '../../../src/studio/editions/editionPlan.ts';

const paper: EditionDraft['paper'] = {
  name: 'Creek rag',
  sheetMm: [560, 760],
  sheetGrain: 'long',
  pieceMm: [330, 270],
  pieceGrain: 'any',
  tearLossMm: 0,
  gramsPerM2: 300,
  damped: 'yes',
};
const draft: EditionDraft = {
  title: 'Low Water, first of the Twelve Tides',
  size: 5,
  artistProofs: null,
  artist: 'A.T.',
  printer: 'P.R. with J.O.',
  paper,
  ink: 'black, 70 soft to 30 stiff',
  inkedCm2: 280,
  press: 'the flatbed by the door, leather scraper',
  drawingMaterials: 'tusche in water, crayon #3, autographic ink',
  etches: 'first by the tannic route, second full',
  rackPlaces: 12,
  approvalPullId: null,
  approval: { lights: 0.12, middles: 0.45, darks: 0.86 },
  approvedBy: 'A.T.',
  chop: '',
  signature: 'pencil, under the image at the right',
  signedOn: '2026-03-09',
  cancellation: '',
  cancelledOn: null,
  note: '',
};

export const tearDowns = {
  plain: torn({}),
  short: torn({ sheetGrain: 'short', pieceMm: [280, 380] }),
  unknown: torn({ sheetGrain: 'unknown', pieceMm: [400, 300], tearLossMm: 3 }),
  none: torn({ pieceMm: [800, 600] }),
};

function torn(more: Partial<EditionDraft['paper']>) {
  const past = { impressions: 0, spoiled: 0, intervalsMinutes: [] };
  return planEdition({ ...draft, paper: { ...paper, ...more }, past }).tearDown!;
}

const darks = [0, 0.002, -0.001, 0.001, 0.003, 0.005, 0.007, 0.009, 0.011, 0.01];
const middles = [0.001, -0.002, 0.003, -0.001, 0.0, 0.002, -0.002, 0.001, 0.024, 0.001];
export const drifts: Readonly<Record<'chart' | 'few' | 'none', readonly ToneDrift[]>> = {
  chart: drift(10),
  few: drift(5),
  none: [],
};

function drift(prints: number): readonly ToneDrift[] {
  return editionDrift(
    darks.slice(0, prints).map((distance, index) => ({
      n: index + 1,
      lights: null,
      middles: middles[index]!,
      darks: distance,
      // eight and more are read from photographs, the few were typed
      ...(prints < 8 ? {} : { ranges: rangesAt(index) }),
    })),
  );
}

function rangesAt(index: number): NonNullable<EditionPull['ranges']> {
  const around = (value: number, half: number) => [value - half, value + half] as const;
  return { lights: null, middles: around(middles[index]!, 0.011), darks: around(darks[index]!, 0.008) };
}

const stone = { id: 's', name: 'S-01', widthMm: 450, heightMm: 340, colour: 'grey' };
const work = { id: 'w', title: 'Low Water', stone, zones: [] } as unknown as WorkEntry;
const kept = {
  id: 'e',
  workId: 'w',
  putBy: false,
  version: 3,
  createdAt: '',
  changedAt: '',
  sample: true,
};

const entries = ['good', 'good', 'torn', 'good', 'good', 'second', 'good', 'good', 'good'].map(
  (verdict, index) => {
    const at = new Date(Date.UTC(2026, 2, 7, 10, 6 * index)).toISOString();
    return {
      sequence: index + 1,
      clientId: `p${index + 1}`,
      kind: 'impression',
      at,
      sentAt: null,
      receivedAt: at,
      actor: 'P.R.',
      device: 'press',
      payload: { verdict },
    } as LedgerEntry;
  },
);

export const documentations: Readonly<Record<'printed' | 'planned', EditionDocumentation>> = {
  printed: documentationOf({
    work,
    plan: null,
    runs: [],
    entries,
    edition: {
      ...draft,
      ...kept,
      prints: [
        ...['p1', 'p2', 'p4', 'p5', 'p7'].map((impression, index) => ({
          impression,
          kind: 'edition' as const,
          number: index + 1,
        })),
        { impression: 'p8', kind: 'artist', number: 1 },
        { impression: 'p9', kind: 'printer', number: 1 },
        { impression: 'p3', kind: 'destroyed', number: null },
        { impression: 'p6', kind: 'destroyed', number: null },
      ],
    },
  }),
  planned: documentationOf({
    work,
    plan: null,
    runs: [],
    entries: [],
    edition: {
      ...draft,
      ...kept,
      prints: [],
      artist: '',
      printer: '',
      ink: '',
      press: '',
      drawingMaterials: '',
      etches: '',
      approvedBy: '',
      signature: '',
      signedOn: null,
      paper: { ...paper, name: '', gramsPerM2: null, pieceMm: null, sheetMm: null, damped: 'unknown' },
    },
  }),
};
