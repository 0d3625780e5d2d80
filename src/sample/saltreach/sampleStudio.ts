import type { SampleStudio } from '../../application/placeStudio.ts';
import type { PlanChoices } from '../../records/keptPlan.ts';
import type { StoneDraft } from '../../records/stoneEntry.ts';
import type { PastFact, WorkInput, WorkZone } from '../../records/work.ts';
import type { Point } from '../../science/geometry/point.ts';
import { sampleHours } from './sampleHours.ts';
import { sampleInks } from './sampleInks.ts';
import { sampleKit } from './sampleKit.ts';
import { sampleMaterials } from './sampleMaterials.ts';
import { sampleTestStone } from './sampleTestStone.ts';

/** Saltreach Stone Room, a shed on a tidal creek: six stones, and what is on them. Invented throughout. */
export function sampleStudio(): SampleStudio {
  return {
    stones: [
      stone('S-01', 450, 340, 'grey', [78, 78, 79, 78]),
      stone('S-02', 400, 500, 'light grey', [81, 81, 80, 81]),
      stone('S-03', 360, 280, 'yellow', [66, 66, 66, 65]),
      stone('S-04', 500, 620, 'dark grey', [null, null, null, null]),
      stone('S-05', 300, 400, 'light grey', [72, 72, 71, 72]),
      stone('S-06', 450, 340, 'blue', [90, 90, 90, 90]),
    ],
    kit: sampleKit,
    inks: sampleInks,
    materials: sampleMaterials,
    hours: sampleHours,
    testStones: [{ id: 'saltreach-test-stone-1', draft: sampleTestStone }],
    works: [
      work('neap', 'S-04', 'Neap', { stage: 'grained' }),
      work('slack-water', 'S-03', 'Slack Water', {
        origin: { kind: 'halfway', stage: 'rolled-up', gummed: 'yes', history: slackWaterPast },
        zones: [
          zone('hull', 'Hull', 'crayon-1', box(60, 60, 200, 90), { deposit: 'dark' }),
          zone('ropes', 'Ropes', 'pen', box(60, 165, 200, 40)),
        ],
      }),
      {
        ...work('spring-tide', 'S-05', 'Spring Tide', {
          stage: 'first-etch',
          zones: [
            zone('flood', 'Flood', 'tusche-spirit', box(40, 120, 220, 200), { deposit: 'middle' }),
            zone('sluice', 'Sluice', 'tusche-water', box(120, 60, 60, 50), { deposit: 'solid' }),
          ],
          note: 'First etch laid with the apprentice; under gum.',
        }),
        plan: { ...tannicPlan, people: 2 },
      },
      work('high-water', 'S-02', 'High Water', {
        stage: 'drawn',
        zones: [
          zone('clouds', 'Clouds', 'crayon-5', box(50, 50, 300, 130), { deposit: 'light' }),
          zone('sea-wall', 'Sea wall', 'crayon-2', box(50, 190, 300, 120), { deposit: 'middle' }),
          zone('steps', 'Steps', 'rubbing-ink', box(50, 320, 140, 110), { deposit: 'middle' }),
          zone('gate', 'Tide gate', 'tusche-water', box(210, 320, 140, 110), { deposit: 'solid' }),
        ],
      }),
      {
        ...work('low-water', 'S-01', 'Low Water', {
          stage: 'trial-proofs',
          rectangle: { offsetMm: lowWaterAt, sizeMm: [400, 300] },
          zones: lowWaterZones.map((one) => ({ ...one, polygonMm: one.polygonMm.map(onStone) })),
          note: 'First of the Twelve Tides, for the Saltreach Harbour Trust. Seven proofs pulled.',
        }),
        plan: tannicPlan,
      },
    ],
  };
}

const slackWaterPast: readonly PastFact[] = [
  { fact: 'grain', value: '220' },
  { fact: 'drawn-on', value: 'before the winter' },
  { fact: 'media', value: 'crayon #1 and pen' },
];

/** How the room etches: the tannic route, one person, a solution that was weighed and measured. Invented. */
const tannicPlan: PlanChoices = {
  tableId: 'tannic',
  tableVersion: null,
  tannicBatchId: null,
  tannic: { gramsPerLitre: 60, pH: 3.4, gum: true },
  people: 1,
  filmMm: 0.5,
  layMm2PerSecond: 1500,
  guardMm: 5,
};

/** Where the work rectangle of "Low Water" lies on its stone, mm. */
const lowWaterAt: Point = [25, 20];

function onStone([x, y]: Point): Point {
  return [x + lowWaterAt[0], y + lowWaterAt[1]];
}

/** As on the measured pair, in mm from the top left of the work rectangle. */
const lowWaterZones: readonly WorkZone[] = [
  zone(
    'sky',
    'Sky',
    'tusche-water',
    [
      [22, 20],
      [378, 20],
      [378, 118],
      [300, 122],
      [210, 117],
      [120, 123],
      [22, 119],
    ],
    { deposit: 'wash', tone: { mean: 0.35, darkest: 0.55, basis: 'typed' } },
  ),
  zone('moon', 'Moon', 'stop-out', disc(292, 62, 18.5), { intention: 'stop-out' }),
  zone(
    'mudbank',
    'Mudbank',
    'crayon-3',
    [
      [22, 172],
      [70, 158],
      [130, 150],
      [196, 156],
      [252, 170],
      [300, 176],
      [300, 238],
      [22, 238],
    ],
    { deposit: 'middle' },
  ),
  zone('reeds', 'Reeds', 'autographic-ink', box(306, 132, 72, 106)),
  zone('post', 'Post', 'tusche-water', box(86, 125, 15, 26), { deposit: 'solid' }),
];

function box(x: number, y: number, width: number, height: number): readonly Point[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function disc(x: number, y: number, radius: number): readonly Point[] {
  return Array.from({ length: 24 }, (_, index): Point => {
    const angle = (index * Math.PI) / 12;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

function zone(
  id: string,
  name: string,
  medium: string,
  polygonMm: readonly Point[],
  more: Partial<WorkZone> = {},
): WorkZone {
  return { id, name, medium, polygonMm, tone: null, ...more };
}

function stone(
  name: string,
  widthMm: number,
  heightMm: number,
  colour: string,
  cornerThicknessMm: StoneDraft['cornerThicknessMm'],
): SampleStudio['stones'][number] {
  const draft: StoneDraft = {
    name,
    widthMm,
    heightMm,
    cornerThicknessMm,
    colour,
    densityGPerCm3: null,
    graining: [],
    straightedge: [],
    pressSetUp: { scraperMm: null, packing: '', pressureEighths: null },
    photographs: [],
    note: '',
  };
  return { id: stoneId(name), draft };
}

function stoneId(name: string): string {
  return `saltreach-${name.toLowerCase()}`;
}

function work(
  id: string,
  stoneName: string,
  title: string,
  more: Partial<WorkInput>,
): SampleStudio['works'][number] {
  const input: WorkInput = {
    title,
    stoneId: stoneId(stoneName),
    head: 'top',
    stage: null,
    origin: { kind: 'new' },
    rectangle: null,
    zones: [],
    photographs: [],
    note: '',
    ...more,
  };
  return { id: `saltreach-${id}`, input };
}
